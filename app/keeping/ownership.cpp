#include "app/keeping/ownership.h"

#include "core/files/textfile.h"
#include "core/files/work/versions.h"

#include <QFileInfo>
#include <QLockFile>

#include <functional>
#include <system_error>

namespace app {

namespace fs = std::filesystem;

namespace {

// One name for one file, by whatever links it is reached.
QString oneName(QString const& file)
{
    QFileInfo const info(file);
    QString whole = info.canonicalFilePath();
    if (!whole.isEmpty()) return whole;
    QString const folder = QFileInfo(info.absolutePath()).canonicalFilePath();
    return folder.isEmpty() ? info.absoluteFilePath() : folder + '/' + info.fileName();
}

} // namespace

Ownership::Ownership() = default;
Ownership::~Ownership() = default;

bool Ownership::take(fs::path const& folder, QString const& file)
{
    QString const name = oneName(file);
    if (m_mark && name == m_file) return true;
    std::error_code failed;
    fs::create_directories(folder, failed);
    fs::path const mark =
        files::versionsFolder(folder, name.toStdString()).string() + ".lock";
    auto next = std::make_unique<QLockFile>(QString::fromStdString(mark.string()));
    next->setStaleLockTime(0);
    if (!next->tryLock() && next->error() == QLockFile::LockFailedError) return false;
    m_mark = std::move(next);
    m_file = name;
    return true;
}

void Ownership::letGo()
{
    m_mark.reset();
    m_file.clear();
}

std::optional<std::uint64_t> stampOf(QString const& file)
{
    auto const text = files::readTextFile(file.toStdString());
    if (!text) return std::nullopt;
    return std::hash<std::string>{}(*text);
}

} // namespace app
