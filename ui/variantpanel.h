#pragma once

#include "ui/variantlist.h"

#include <QWidget>

namespace ui {

// The side of the window: which chord is selected, how many variants it has, and the list.
class VariantPanel final : public QWidget {
    Q_OBJECT
public:
    explicit VariantPanel(QWidget* parent = nullptr);

    VariantList* list() const { return m_list; }
    void setHeading(QString const& title, QString const& detail);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    int headingHeight() const;

    VariantList* m_list;
    QString m_title;
    QString m_detail;
};

} // namespace ui
