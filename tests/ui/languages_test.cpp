// The window in a language of longer words, and written from right to left: no label is cut.
// The language is made up here: every text of ours is a third longer, as German is of English
// (common practice, no source), and in brackets.
#include "scenario.h"
#include "ui/button.h"
#include "ui/session.h"
#include "ui/workbench.h"

#include <QAbstractButton>
#include <QApplication>
#include <QLabel>
#include <QMenu>
#include <QTest>
#include <QTranslator>
#include <catch2/catch.hpp>

using namespace ui;

namespace {

class Longer : public QTranslator {
public:
    bool isEmpty() const override { return false; }
    QString translate(char const* context, char const* text, char const*, int) const override
    {
        if (QByteArrayView(context).startsWith("Q")) return {}; // Qt's own
        QString const english = QString::fromUtf8(text);
        if (english.size() < 3 || english.contains(QStringLiteral(";;"))) return english;
        qsizetype const end = english.size() - (english.endsWith(QChar(u'…')) ? 1 : 0);
        return QString(english).insert(end, QString(english.size() / 3 + 1, QChar(u'o')));
    }
};

struct InLongWords {
    QApplication& application = scenario::application();
    Longer longer;
    explicit InLongWords(Qt::LayoutDirection direction)
    {
        QCoreApplication::installTranslator(&longer);
        QGuiApplication::setLayoutDirection(direction);
    }
    InLongWords(InLongWords const&) = delete;
    InLongWords& operator=(InLongWords const&) = delete;
    ~InLongWords()
    {
        QCoreApplication::removeTranslator(&longer);
        QGuiApplication::setLayoutDirection(Qt::LayoutDirectionAuto);
    }
};

// Controls and labels that have less room than their words need.
QStringList cutIn(QWidget const& window)
{
    QStringList cut;
    for (QWidget const* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisibleTo(&window) || widget->objectName().startsWith("qt_")) continue;
        QString words;
        int needs = 0;
        if (auto const* button = qobject_cast<QAbstractButton const*>(widget)) {
            words = button->text();
            auto const* own = qobject_cast<Button const*>(widget);
            needs = own ? own->sizeFor(false).width() : button->sizeHint().width();
        } else if (auto const* label = qobject_cast<QLabel const*>(widget)) {
            words = label->text();
            if (label->wordWrap()) {
                if (label->height() < label->heightForWidth(label->width()) - 1)
                    cut << QStringLiteral("%1: too low").arg(words);
                continue;
            }
            needs = label->sizeHint().width();
        }
        if (!words.isEmpty() && widget->width() < needs)
            cut << QStringLiteral("%1: %2 of %3").arg(words).arg(widget->width()).arg(needs);
    }
    return cut;
}

} // namespace

TEST_CASE("In a language of longer words no control of the window is cut, either way it reads",
          "[ui][languages]")
{
    for (Qt::LayoutDirection direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        InLongWords const language(direction);
        Session session{coreEngine(), scenario::brief()};
        Workbench workbench{session, scenario::tables()};
        for (QSize size : {QSize(1400, 900), QSize(1024, 680)}) {
            workbench.resize(size);
            workbench.show();
            REQUIRE(QTest::qWaitForWindowExposed(&workbench));
            REQUIRE(session.open(scenario::jig()));
            QApplication::processEvents();
            INFO("width " << workbench.width()
                          << ", right to left: " << (direction == Qt::RightToLeft));
            QStringList const cut = cutIn(workbench);
            CAPTURE(cut.join('\n').toStdString());
            CHECK(cut.isEmpty());
        }
    }
}

TEST_CASE("A translator that makes texts longer makes the window's labels longer",
          "[ui][languages]")
{
    scenario::application();
    QString const english = Workbench::tr("rolled");
    InLongWords const language(Qt::LeftToRight);
    CHECK(Workbench::tr("rolled").size() > english.size());
}

TEST_CASE("A button's caption stands clear of its words, either way the language reads",
          "[ui][languages]")
{
    scenario::application();
    for (Qt::LayoutDirection direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        InLongWords const language(direction);
        Button button(QStringLiteral("mmmm"));
        button.setCaption(QStringLiteral("mmmm"));
        button.setMenu(new QMenu(&button));
        button.resize(button.sizeHint());
        QImage const picture = button.grab().toImage();
        // Caption, words and arrow, with two spaces without ink between them.
        QRgb const ground = picture.pixel(picture.width() / 2, 5);
        int clear = 0, spaces = 0;
        bool begun = false;
        for (int x = 6; x < picture.width() - 6; ++x) {
            bool ink = false;
            for (int y = 6; y < picture.height() - 6; ++y)
                ink = ink || picture.pixel(x, y) != ground;
            if (ink) {
                if (begun && clear >= 5) ++spaces;
                begun = true;
                clear = 0;
            } else {
                ++clear;
            }
        }
        CAPTURE(direction);
        CHECK(spaces == 2);
    }
}
