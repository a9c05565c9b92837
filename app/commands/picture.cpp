#include "ui/picture.h"
#include "app/commands/verbs.h"
#include "app/exitstatus.h"
#include "app/input.h"
#include "app/mending.h"
#include "app/namedchoice.h"
#include "app/options.h"
#include "app/outputs.h"
#include "app/shelf.h"
#include "core/files/textfile.h"
#include "ui/engine.h"
#include "ui/paint/sheetfiles.h"
#include "ui/session.h"
#include "ui/theme.h"

#include <CLI/CLI.hpp>

#include <QApplication>
#include <QBuffer>
#include <QImage>

#include <map>

namespace app {

namespace {

enum class View { Grid, Sheet, Bank, Workbench };

struct PictureCall {
    std::string input;
    std::string output;
    View view = View::Workbench;
    std::string size = "1440x900";
    double scale = 1;
    ui::Theme theme = ui::Theme::Light;
    ArrangeOptions options;
};

base::Result<QSize> sizeFrom(std::string const& text)
{
    QStringList const sides = QString::fromStdString(text).split('x');
    QSize const size = sides.size() == 2 ? QSize(sides[0].toInt(), sides[1].toInt()) : QSize();
    if (size.width() < 100 || size.height() < 50 || size.width() > 8000 || size.height() > 8000)
        return base::Fault{base::FaultCode::BadCall, "--size",
                           text + "; write WIDTHxHEIGHT in pixels, 100x50 to 8000x8000"};
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

base::Result<QImage> drawnPicture(PictureCall const& call, QSize size)
{
    auto tables = openShelf(call.options);
    if (!tables) return tables.error();
    auto book = openBook(call.input, *tables);
    if (!book) return book.error();
    auto entries = chosenTunes(*book, call.options.tune);
    if (!entries) return entries.error();
    auto brief = readBrief(*book, entries->front(), call.options, *tables);
    if (!brief) return brief.error();

    if (call.view == View::Sheet) {
        auto proposal = proposeOrMend(*brief, call.options, *tables);
        if (!proposal) return proposal.error();
        auto document = drawn(proposal->arrangement, SheetKind::Arrangement);
        if (!document) return document.error();
        return sheetPicture(*std::move(document), size);
    }
    ui::Session session(ui::coreEngine(tables->levels), *brief);
    std::optional<base::Fault> refusal;
    QObject::connect(&session, &ui::Session::refused, &session,
                     [&refusal](base::Fault const& fault) { refusal = fault; });
    session.open(*std::move(brief));
    if (refusal) return *refusal;
    ui::Scene const scene = call.view == View::Grid   ? ui::Scene::Grid
                            : call.view == View::Bank ? ui::Scene::Bank
                                                      : ui::Scene::Workbench;
    return ui::picture(session, *tables, scene, size, call.scale);
}

ExitStatus picture(PictureCall const& call)
{
    auto size = sizeFrom(call.size);
    if (!size) return refuse(size.error());
    ui::dress(*qApp, call.theme);
    auto image = drawnPicture(call, *size);
    if (!image) return refuse(image.error());
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image->save(&buffer, "PNG");
    auto written = files::writeWhole(call.output, bytes.toStdString());
    return written ? Fine : refuse(written.error());
}

} // namespace

void declarePicture(CLI::App& program, int& status)
{
    auto call = std::make_shared<PictureCall>();
    CLI::App* verb = program.add_subcommand("picture", "draw a view of the workbench as a PNG");
    verb->add_option("IN", call->input,
                     "an ABC, MusicXML, MIDI or .sallow file, or - for ABC on standard input")
        ->required();
    verb->add_option("-o,--output", call->output, "the picture, .png")->required();
    takesName<View>(verb->add_option("--view", call->view, "grid, sheet, bank or workbench"),
                    {{"grid", View::Grid},
                     {"sheet", View::Sheet},
                     {"bank", View::Bank},
                     {"workbench", View::Workbench}});
    verb->add_option("--size", call->size, "WIDTHxHEIGHT in pixels");
    verb->add_option("--scale", call->scale, "device pixels to each, 1 to 4")
        ->check(CLI::Range(1.0, 4.0));
    takesName<ui::Theme>(verb->add_option("--theme", call->theme, "light or dark"),
                         {{"light", ui::Theme::Light}, {"dark", ui::Theme::Dark}});
    declare(*verb, call->options);
    verb->callback([call, &status] { status = picture(*call); });
}

} // namespace app
