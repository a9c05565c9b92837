#include "ui/picture.h"

#include "ui/session.h"
#include "ui/stringbank.h"
#include "ui/tunegrid.h"
#include "ui/words.h"
#include "ui/workbench.h"

#include <QCoreApplication>
#include <QWidget>

namespace ui {

namespace {

// Layouts are worked out by events that wait in the queue.
void settle()
{
    for (int round = 0; round < 3; ++round) QCoreApplication::sendPostedEvents();
}

QImage drawn(QWidget& widget, QSize size, double scale)
{
    widget.setAttribute(Qt::WA_DontShowOnScreen);
    widget.resize(size);
    widget.show();
    settle();
    QImage image(size * scale, QImage::Format_RGB32);
    image.setDevicePixelRatio(scale);
    widget.render(&image);
    return image;
}

QImage drawnGrid(Session const& session, QSize size, double scale)
{
    TuneGrid grid;
    grid.setArrangement(session.shownArrangement());
    grid.setSelected(session.selected());
    return drawn(grid, size, scale);
}

QImage drawnBank(Session const& session, QSize size, double scale)
{
    arrange::Arrangement const arrangement = session.shownArrangement();
    StringBank bank;
    bank.setHarp(arrangement.harp);
    if (auto const position = session.selected()) {
        auto const& where = arrangement.positions[*position].position;
        bank.setTitle(positionTitle(arrangement, *position));
        bank.setLevers(leversAt(arrangement, where.played.front().at));
        bank.setFingers(fingersAt(arrangement, *position));
    }
    return drawn(bank, size, scale);
}

} // namespace

QImage picture(Session& session, files::Tables const& tables, Scene scene, QSize size,
               double scale)
{
    if (session.isOpen() && scene == Scene::Grid) return drawnGrid(session, size, scale);
    if (session.isOpen() && scene == Scene::Bank) return drawnBank(session, size, scale);
    Workbench workbench(session, tables);
    if (scene == Scene::Sheet) workbench.setView(Workbench::View::Sheet);
    return drawn(workbench, size, scale);
}

} // namespace ui
