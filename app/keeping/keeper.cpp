#include "app/keeping/keeper.h"

#include "app/keeping/leftbehind.h"
#include "core/files/textfile.h"

#include <QLockFile>
#include <QUuid>

#include <chrono>
#include <system_error>
#include <utility>

namespace app {

namespace fs = std::filesystem;

Keeper::Keeper(fs::path folder, QObject* parent) : QObject(parent), m_folder(std::move(folder))
{
    qRegisterMetaType<base::Fault>("base::Fault");
    std::string const id =
        QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    m_file = m_folder / (id + std::string(unsavedEnding));
    m_thread = std::thread([this] { work(); });
}

Keeper::~Keeper()
{
    {
        std::lock_guard const guard(m_guard);
        m_stopping = true;
    }
    m_change.notify_all();
    m_thread.join();
}

void Keeper::keep(Making making)
{
    {
        std::lock_guard const guard(m_guard);
        m_wish = Wish::Keep;
        m_making = std::move(making);
    }
    m_change.notify_all();
}

void Keeper::forget()
{
    {
        std::lock_guard const guard(m_guard);
        m_wish = Wish::Forget;
        m_making = {};
    }
    m_change.notify_all();
}

void Keeper::finish()
{
    std::unique_lock guard(m_guard);
    m_hasty = true;
    m_change.notify_all();
    m_change.wait(guard, [this] { return m_wish == Wish::Nothing && !m_working; });
    m_hasty = false;
}

void Keeper::work()
{
    std::unique_lock guard(m_guard);
    while (true) {
        m_change.wait(guard, [this] { return m_wish != Wish::Nothing || m_stopping; });
        if (m_wish == Wish::Nothing) return;
        if (m_wish == Wish::Keep)
            m_change.wait_for(guard, std::chrono::milliseconds(gatheringMs), [this] {
                return m_wish == Wish::Forget || m_hasty || m_stopping;
            });
        Wish const wish = std::exchange(m_wish, Wish::Nothing);
        Making const making = std::exchange(m_making, {});
        m_working = true;
        guard.unlock();
        if (wish == Wish::Keep) {
            write(making);
        } else {
            std::error_code failed;
            fs::remove(m_file, failed);
        }
        guard.lock();
        m_working = false;
        m_change.notify_all();
    }
}

// The folder may have gone since the last time, or come back.
bool Keeper::prepared()
{
    std::error_code failed;
    fs::create_directories(m_folder, failed);
    if (failed) {
        emit this->failed({base::FaultCode::CannotWrite, m_folder.string(), failed.message()});
        return false;
    }
    if (!m_lock) {
        auto lock = std::make_unique<QLockFile>(QString::fromStdString(lockOf(m_file)));
        lock->setStaleLockTime(0);
        if (lock->tryLock()) m_lock = std::move(lock);
    }
    return true;
}

void Keeper::write(Making const& making)
{
    if (!prepared()) return;
    if (auto const done = files::writeWhole(m_file, files::unsavedText(making())))
        emit kept();
    else
        emit failed(done.error());
}

} // namespace app
