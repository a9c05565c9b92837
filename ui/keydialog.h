#pragma once

#include "core/proposal/keyranking.h"

#include <QDialog>

#include <optional>
#include <vector>

class QLabel;
class QTreeWidget;

namespace ui {

// The keys of a tune on its harp in a list: what each takes of levers and leaves to the left
// hand, with the reason for the one looked at. Each key stands once, in its best octave.
class KeyDialog final : public QDialog {
    Q_OBJECT
public:
    KeyDialog(harp::Harp const& harp, std::vector<proposal::RankedKey> const& keys,
              music::Key current, QWidget* parent = nullptr);

    std::optional<music::Key> chosen() const; // none while no key that can be played is marked

private:
    void look();

    std::vector<proposal::RankedKey> m_keys;
    QTreeWidget* m_list;
    QLabel* m_reason;
};

} // namespace ui
