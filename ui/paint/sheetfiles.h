#pragma once

#include "core/sheet/drawing.h"

#include <QByteArray>
#include <QImage>
#include <QSizeF>

namespace ui {

// The printed thing as the bytes of a file, so that the caller can write it whole or not at
// all. All need a QGuiApplication (the offscreen platform will do).

// One page of the file for every page; fonts embedded; title and creator set.
QByteArray pdfFile(sheet::Document const& document);

// Pages one below the other, where a file has room for one drawing.
inline constexpr double betweenPagesMm = 6;
QSizeF stackedMm(sheet::Document const& document);

// One drawing, pages one below the other. Signs of music are outlines, words are text: they can
// be found and changed, and keep place and length in any font.
QByteArray svgFile(sheet::Document const& document);

// Pictures: of all pages one below the other, or of one page.
inline constexpr double pngDotsPerInch = 150;
QImage sheetImage(sheet::Document const& document, double dotsPerInch = pngDotsPerInch);
QByteArray pngFile(sheet::Document const& document, double dotsPerInch = pngDotsPerInch);
QByteArray pngFileOfPage(sheet::Document const& document, std::size_t page, double dotsPerInch);

} // namespace ui
