#include "ui/papers.h"

#include "core/sheet/papers/drill.h"

#include <QCoreApplication>

namespace ui {

QString paperName(PaperKind kind)
{
    auto const tr = [](char const* text) {
        return QCoreApplication::translate("Papers", text);
    };
    switch (kind) {
    case PaperKind::Pattern:
        return tr("Pattern sheet");
    case PaperKind::Lead:
        return tr("Lead sheet");
    case PaperKind::Drill:
        return tr("Placing drill");
    case PaperKind::Arrangement:
        break;
    }
    return tr("Arrangement sheet");
}

sheet::Document paperOf(PaperKind kind, arrange::Arrangement const& arrangement,
                        sheet::MusicFont const& font, sheet::SheetStyle const& style)
{
    switch (kind) {
    case PaperKind::Pattern:
        return sheet::patternSheet(arrangement, font, style);
    case PaperKind::Lead:
        return sheet::leadSheet(writtenTune(arrangement), font, style);
    case PaperKind::Drill:
        return sheet::drillSheet(arrangement, font, style);
    case PaperKind::Arrangement:
        break;
    }
    return sheet::arrangementSheet(arrangement, font, style);
}

} // namespace ui
