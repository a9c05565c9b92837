#include "app/keptpatterns.h"

#include "core/files/tables/patternfile.h"
#include "core/files/textfile.h"

#include <QStandardPaths>

#include <algorithm>

namespace app {

std::filesystem::path keptPatternsFile()
{
    if (QString const named = qEnvironmentVariable("SALLOW_PATTERNS"); !named.isEmpty())
        return named.toStdString();
    // Not AppDataLocation: verbs run without an application that would give it a name.
    QString const data = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation);
    return std::filesystem::path(data.toStdString()) / "sallow" / "patterns.json";
}

base::Result<std::vector<pattern::Pattern>> keptPatterns()
{
    std::filesystem::path const file = keptPatternsFile();
    std::error_code failed;
    if (!std::filesystem::exists(file, failed)) return std::vector<pattern::Pattern>{};
    auto const text = files::readTextFile(file);
    if (!text) return text.error();
    return files::readPatternFile(*text, file.string());
}

base::Result<base::Done> keepPattern(pattern::Pattern const& own)
{
    auto kept = keptPatterns();
    if (!kept) return kept.error();
    std::erase_if(*kept, [&](pattern::Pattern const& p) { return p.name == own.name; });
    kept->push_back(own);
    std::filesystem::path const file = keptPatternsFile();
    std::error_code failed;
    std::filesystem::create_directories(file.parent_path(), failed);
    return files::writeWhole(file.string(), files::patternFileText(*kept));
}

} // namespace app
