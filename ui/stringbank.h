#pragma once

#include "core/harp/levers.h"
#include "ui/readable.h"
#include "ui/stringbanklayout.h"

#include <QBasicTimer>
#include <QElapsedTimer>
#include <QPixmap>
#include <QWidget>

#include <optional>
#include <vector>

namespace ui {

// The strings of one harp as the player sees them, with their levers, the fingers of both
// hands, and what sounds. Shows what it is given and reports plucks.
class StringBank final : public QWidget, public Readable {
    Q_OBJECT
public:
    explicit StringBank(QWidget* parent = nullptr);

    void setHarp(harp::Harp harp);
    void setLevers(harp::LeverSetting levers); // one for each string
    void setFingers(std::vector<FingerDisc> fingers);
    // Where the left hand is placed next, while something is played.
    void setAhead(std::vector<FingerDisc> fingers);
    std::vector<FingerDisc> const& fingers() const { return m_fingers; }
    std::vector<FingerDisc> const& ahead() const { return m_ahead; }
    // Those that a snag of what is shown is about.
    void setSnags(std::vector<harp::StringIndex> strings);
    void setLeverHint(QString const& words); // shown at a lever, %1 its string
    void setTitle(QString const& title);    // what the fingers belong to
    void ring(harp::StringIndex string, harp::Side hand); // it lights and fades
    void still(harp::StringIndex string);                 // it is damped
    void stillAll();                        // nothing sounds any more

    StringBankLayout const& bank() const { return m_layout; }
    std::optional<harp::StringIndex> cursor() const { return m_cursor; }

    // One item for each string.
    int readableCount() const override { return m_harp ? m_harp->count() : 0; }
    ReadableItem readableItem(int index) const override;
    void pressReadable(int index) override { pluck(harp::StringIndex(index)); }

    QSize sizeHint() const override { return {900, 214}; }
    QSize minimumSizeHint() const override;

signals:
    void stringPlucked(harp::StringIndex string); // index from the lowest
    // The lever of a string is to be turned, by a click on it or by the arrow keys up and down.
    void leverTurned(harp::StringIndex string, harp::Lever to);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;
    void timerEvent(QTimerEvent* event) override;

private:
    struct Ringing {
        qint64 since = 0; // in ms of m_clock
        harp::Side hand = harp::Side::Left;
    };

    static constexpr double faintest = 0.02; // glow below which a string counts as still

    double letters() const; // how many times as large as usual
    void layOut();
    void moveCursor(harp::StringIndex string);
    double glow(harp::StringIndex string) const; // 1 when just plucked, falling to 0
    music::Pitch soundingPitch(harp::StringIndex string) const;
    harp::Lever lever(harp::StringIndex string) const;
    QColor stringColour(harp::StringIndex string) const;
    void pluck(harp::StringIndex string);
    std::optional<harp::StringIndex> leverAt(QPointF where) const; // of a string that has one
    void turnLever(harp::StringIndex string, harp::Lever to);
    bool isFocused(harp::StringIndex string) const { return hasFocus() && m_cursor == string; }
    QPixmap const& stillPicture();
    void paintHeading(QPainter& painter) const;
    void paintFrame(QPainter& painter) const;
    void paintLight(QPainter& painter, harp::StringIndex string) const;
    void paintString(QPainter& painter, harp::StringIndex string) const;
    void paintLever(QPainter& painter, harp::StringIndex string) const;
    void paintLetter(QPainter& painter, harp::StringIndex string) const;
    void paintSnags(QPainter& painter) const;
    void paintReach(QPainter& painter) const;
    void paintAhead(QPainter& painter) const;
    void paintDiscs(QPainter& painter) const;

    std::optional<harp::Harp> m_harp;
    harp::LeverSetting m_levers;
    std::vector<FingerDisc> m_fingers;
    std::vector<FingerDisc> m_ahead;
    std::vector<harp::StringIndex> m_snags;
    QString m_title;
    QString m_leverHint;
    StringBankLayout m_layout;
    base::List<harp::StringIndex, std::optional<Ringing>> m_ringing;
    QElapsedTimer m_clock;
    QBasicTimer m_fade;
    QPixmap m_still;
    bool m_stillStale = true;
    std::optional<harp::StringIndex> m_pointed;
    std::optional<harp::StringIndex> m_cursor; // of the keyboard
};

} // namespace ui
