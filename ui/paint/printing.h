#pragma once

#include "core/sheet/drawing.h"

class QPrinter;
class QWidget;

namespace ui {

// Makes a printer ready for the pages: their paper, the whole of it, and the title as the name
// of the job.
void readyFor(QPrinter& printer, sheet::Document const& document);

// Prints every page of the printer's range on a sheet of its own, at its own size where the
// paper is large enough, else as large as fits, in the middle.
void printPages(QPrinter& printer, sheet::Document const& document);

// The desktop's preview, from which the pages are printed.
void previewPrint(sheet::Document const& document, QWidget* parent);

} // namespace ui
