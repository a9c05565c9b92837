#pragma once

#include "core/files/tables/tables.h"
#include "core/proposal/brief.h"

class QApplication;

// A small scenario for the tests of the screen: the usual harp, hand and level, and an invented
// jig of two parts.
namespace scenario {

files::Tables const& tables();
tune::Tune jig();
proposal::Brief brief();

// The one application that widgets need.
QApplication& application();

} // namespace scenario
