#pragma once

#include <QDialog>

#include <functional>
#include <optional>

class QCheckBox;
class QLabel;
class QSpinBox;

namespace ui {

// How pages become PNG pictures: a file a page in a resolution, or all of them in one picture.
// It says which files that makes, and which of them are replaced.
class PngDialog final : public QDialog {
    Q_OBJECT
public:
    // The name of a page's file, pages counted from 1.
    using Names = std::function<QString(int page)>;
    // `path`: of the one picture; a document of one page has that name, too.
    PngDialog(QString path, int pages, Names names, QWidget* parent = nullptr);

    // In dots an inch; none: all pages in one picture.
    std::optional<int> resolution() const;
    QString said() const;

private:
    void check();
    QString words() const;

    QString m_path;
    int m_pages;
    Names m_names;
    QSpinBox* m_resolution;
    QCheckBox* m_onePicture;
    QLabel* m_said;
};

} // namespace ui
