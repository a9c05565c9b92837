#pragma once

#include "core/tune/pagewords.h"

#include <QDialog>

class QLineEdit;
class QPlainTextEdit;

namespace ui {

// The words on the page that are the arranger's to edit. An empty field prints nothing.
class WordsDialog final : public QDialog {
    Q_OBJECT
public:
    explicit WordsDialog(tune::PageWords const& words, QWidget* parent = nullptr);

    tune::PageWords words() const;

private:
    QLineEdit* m_title;
    QLineEdit* m_composer;
    QLineEdit* m_origin;
    QLineEdit* m_source;
    QLineEdit* m_arranger;
    QLineEdit* m_copyright;
    QPlainTextEdit* m_notes;
};

} // namespace ui
