#pragma once

#include <QDialog>
#include <QStringList>

#include <optional>

class QLineEdit;
class QListWidget;

namespace ui {

// The tunes of a book to choose one from: type a part of the title or its number, then Enter.
class BookDialog final : public QDialog {
    Q_OBJECT
public:
    // `current` is the row chosen at first.
    BookDialog(QString const& book, QStringList const& tunes, int current,
               QWidget* parent = nullptr);

    // The chosen row of `tunes`; none while the words typed fit no tune.
    std::optional<int> chosen() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void narrow(QString const& words);

    QLineEdit* m_words;
    QListWidget* m_tunes;
};

// Asks; none when the arranger thinks better of it.
std::optional<int> chooseTune(QString const& book, QStringList const& tunes, int current,
                              QWidget* parent);

} // namespace ui
