#pragma once

#include "core/proposal/asked.h"

#include <QTextBrowser>

#include <vector>

namespace ui {

// The shapes of the book that cannot be played at the selected chord, each with the reason and
// what would help.
class WhyNotList final : public QTextBrowser {
    Q_OBJECT
public:
    explicit WhyNotList(QWidget* parent = nullptr);
    void setRows(std::vector<proposal::Unplayable> const& rows);
};

} // namespace ui
