#pragma once

#include "ui/variantlist.h"

#include <QWidget>

namespace ui {

class Button;
class FollowedBox;
class OwnPattern;
class WhyNotList;

// The side of the window: which chord is selected, how many variants it has, the list of them,
// and below it a line for a pattern of one's own. Unfolded, what cannot be played here takes
// the place of the list.
class VariantPanel final : public QWidget {
    Q_OBJECT
public:
    explicit VariantPanel(QWidget* parent = nullptr);

    VariantList* list() const { return m_list; }
    OwnPattern* own() const { return m_own; }
    FollowedBox* followed() const { return m_followed; }
    WhyNotList* whyNot() const { return m_whyNot; }
    Button* whyNotButton() const { return m_whyNotButton; }
    bool showsWhyNot() const;
    void setHeading(QString const& title, QString const& detail);

signals:
    void whyNotWanted(); // it is unfolded

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    int headingHeight() const;
    bool isAskedBelow() const;
    void layOut();

    VariantList* m_list;
    WhyNotList* m_whyNot;
    OwnPattern* m_own;
    FollowedBox* m_followed;
    Button* m_whyNotButton;
    QString m_title;
    QString m_detail;
};

} // namespace ui
