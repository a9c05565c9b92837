#pragma once

#include "core/sheet/drawing.h"

#include <QByteArray>

namespace ui {

// A PDF with what a reader program shows beside the pages: the author, and a list of parts to
// turn to. The pages themselves stay as they are.
QByteArray withReadersData(QByteArray const& pdf, sheet::Document const& document);

} // namespace ui
