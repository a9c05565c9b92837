#include "ui/picture.h"

#include "ui/stringbank.h"
#include "ui/tunegrid.h"
#include "ui/workbench.h"

#include <QCoreApplication>
#include <QPainter>

namespace ui {

namespace {

// Layouts are worked out by events that wait in the queue.
void settle()
{
    for (int round = 0; round < 3; ++round) QCoreApplication::sendPostedEvents();
}

} // namespace

QImage picture(Session& session, files::Tables const& tables, Scene scene, QSize size,
               double scale)
{
    Workbench workbench(session, tables);
    workbench.setAttribute(Qt::WA_DontShowOnScreen);
    workbench.resize(size);
    workbench.show();
    settle();
    QWidget* shown = &workbench;
    if (scene == Scene::Grid) shown = workbench.grid();
    if (scene == Scene::Bank) shown = workbench.bank();
    if (shown != &workbench) {
        shown->setParent(nullptr);
        shown->setAttribute(Qt::WA_DontShowOnScreen);
        shown->resize(size);
        shown->show();
        settle();
    }
    QImage image(size * scale, QImage::Format_RGB32);
    image.setDevicePixelRatio(scale);
    shown->render(&image);
    if (shown != &workbench) shown->setParent(&workbench);
    return image;
}

} // namespace ui
