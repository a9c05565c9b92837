#pragma once

#include "core/pattern/pattern.h"

#include <QWidget>

#include <optional>

class QLabel;
class QLineEdit;

namespace ui {

class Button;

// Where the arranger types a pattern of her own. It is checked at every letter: what was read,
// or where it goes wrong and what to do. What becomes of it is decided elsewhere.
class OwnPattern final : public QWidget {
    Q_OBJECT
public:
    explicit OwnPattern(QWidget* parent = nullptr);

    void setReady(bool ready); // a chord is selected
    QLineEdit* line() const { return m_line; }
    QString said() const; // what stands under the line
    Button* use() const { return m_use; }
    Button* keep() const { return m_keep; }

signals:
    void useClicked(pattern::Pattern const& own);  // at the selected chord
    void keepClicked(pattern::Pattern const& own); // in the arranger's own book
    void resized();                                // it is taller or lower than before

private:
    void check();
    void useIt();

    QLineEdit* m_line;
    QLabel* m_said;
    Button* m_use;
    Button* m_keep;
    std::optional<pattern::Pattern> m_read;
    bool m_ready = false;
};

} // namespace ui
