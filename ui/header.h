#pragma once

#include <QKeySequence>
#include <QWidget>

class QMenu;

namespace ui {

class Button;

// The head of the window: what is open, for which key, harp, hand and level, and which view of
// it is shown.
class Header final : public QWidget {
    Q_OBJECT
public:
    enum class View { Grid, Sheet };

    explicit Header(QWidget* parent = nullptr);

    // The detail stands small under the title: kind of tune, meter, set-up.
    void setTitle(QString const& title, QString const& detail);
    QString told() const; // both, as one sentence after another
    void setKeyWords(QString const& words);
    void setHarpWords(QString const& words);
    void setHandWords(QString const& words);
    void setLevelWords(QString const& words);
    void setStyleWords(QString const& words);
    void setView(View view);

    // The menus open under the buttons; who fills them decides what they do.
    QMenu* keyMenu() const { return m_keyMenu; }
    QMenu* harpMenu() const { return m_harpMenu; }
    QMenu* handMenu() const { return m_handMenu; }
    QMenu* levelMenu() const { return m_levelMenu; }
    QMenu* styleMenu() const { return m_styleMenu; }

signals:
    void viewClicked(ui::Header::View view);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    class Title;

    Button* chip(QString const& caption, QString const& toolTip, QMenu* menu);
    void openBy(Button* button, QKeySequence const& keys);
    void setWords(Button* button, QString const& caption, QString const& words);
    void fit();

    QMenu* m_keyMenu = nullptr;
    QMenu* m_harpMenu = nullptr;
    QMenu* m_handMenu = nullptr;
    QMenu* m_levelMenu = nullptr;
    QMenu* m_styleMenu = nullptr;
    Title* m_title;
    Button* m_key;
    Button* m_harp;
    Button* m_hand;
    Button* m_level;
    Button* m_style;
    Button* m_grid;
    Button* m_sheet;
};

} // namespace ui
