#pragma once

#include "core/base/fault.h"

#include <QString>

class QWidget;

namespace app {

// Why a file could not be written, as far as the arranger can do something about it.
enum class WriteTrouble { ReadOnly, Full, Gone, Other };
WriteTrouble troubleOf(base::Fault const& fault);

// One or two sentences: what is wrong, that the work is safe, what to do.
QString troubleWords(base::Fault const& fault, QString const& path);

enum class AfterTrouble { TryAgain, SaveElsewhere, Cancel };
AfterTrouble askAfterTrouble(QWidget* over, base::Fault const& fault, QString const& path);

// The file was changed by another program since it was opened.
enum class AfterChange { Replace, SaveElsewhere, Cancel };
AfterChange askAfterChange(QWidget* over, QString const& path);

} // namespace app
