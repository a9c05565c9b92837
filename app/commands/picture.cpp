#include "ui/picture.h"

#include "app/cli/job.h"
#include "app/commands/verbs.h"
#include "core/base/words.h"
#include "core/files/textfile.h"
#include "ui/engine.h"
#include "ui/paint/sheetfiles.h"
#include "ui/session.h"
#include "ui/theme.h"

#include <QApplication>
#include <QBuffer>
#include <QImage>

namespace app {

namespace {

base::Result<QSize> sizeFrom(std::string const& text)
{
    QStringList const sides = QString::fromStdString(text).split('x');
    QSize const size = sides.size() == 2 ? QSize(sides[0].toInt(), sides[1].toInt()) : QSize();
    if (size.width() < 100 || size.height() < 50 || size.width() > 8000 || size.height() > 8000)
        return base::Fault{
            base::FaultCode::BadCall, "--size",
            base::say("{}; write WIDTHxHEIGHT in pixels, 100x50 to 8000x8000", text)};
    return size;
}

// The first page, fitted into the size on white.
QImage sheetPicture(sheet::Document document, QSize size)
{
    document.pages.resize(1);
    double const fit = std::min(size.width() / document.pages[0].widthMm,
                                size.height() / document.pages[0].heightMm);
    QImage const page = ui::sheetImage(document, fit * 25.4);
    return page;
}

base::Result<QImage> drawnPicture(Job const& job, QSize size)
{
    PictureOptions const& wish = job.call.picture;
    auto brief = wished(job, job.entries.front());
    if (!brief) return brief.error();
    auto proposal = proposed(job, *brief);
    if (!proposal) return proposal.error();
    if (wish.view == "sheet") {
        perform::DanceWays const& ways = job.tables.ways;
        sheet::SheetStyle style;
        style.slowing =
            perform::told(ways, perform::slowingFor(ways.slowings, brief->tune, std::nullopt));
        auto document = drawn(proposal->arrangement, SheetKind::Arrangement, style);
        if (!document) return document.error();
        return sheetPicture(*std::move(document), size);
    }
    // As it was made, with what the call has it keep and mend.
    ui::Session session(ui::coreEngine(job.tables.levels), proposal->brief);
    std::optional<base::Fault> refusal;
    QObject::connect(&session, &ui::Session::refused, &session,
                     [&refusal](base::Fault const& fault) { refusal = fault; });
    session.open(proposal->brief);
    if (refusal) return *refusal;
    ui::Scene const scene = wish.view == "grid"   ? ui::Scene::Grid
                            : wish.view == "bank" ? ui::Scene::Bank
                                                  : ui::Scene::Workbench;
    return ui::picture(session, job.tables, scene, size, wish.scale);
}

} // namespace

ExitStatus picture(Call const& call)
{
    auto const size = sizeFrom(call.picture.size);
    if (!size) return refuse(size.error());
    OutputNames names = namesFor(call);
    auto const paths = claimed(call.outputs, names);
    if (!paths) return refuse(paths.error());
    for (std::string const& path : *paths)
        if (!path.ends_with(".png"))
            return refuse(
                {base::FaultCode::UnknownFileKind, path, base::said("a picture is a .png")});
    auto const job = jobOfOneTune(call);
    if (!job) return refuse(job.error());
    ui::dress(*qApp, ui::themeNamed(QString::fromStdString(call.picture.theme)));
    auto const image = drawnPicture(*job, *size);
    if (!image) return refuse(image.error());
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image->save(&buffer, "PNG");
    for (std::string const& path : *paths) {
        auto const written = files::writeWhole(path, bytes.toStdString());
        if (!written) return refuse(written.error());
    }
    return Fine;
}

} // namespace app
