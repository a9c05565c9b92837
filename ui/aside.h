#pragma once

#include <QObject>
#include <QThread>

#include <atomic>
#include <functional>
#include <memory>
#include <utility>
#include <vector>

namespace ui {

// Long work beside the window, one thing at a time: what is begun gives up what was begun before.
class Aside final : public QObject {
public:
    using Wanted = std::function<bool()>; // whether the work is still asked for

    explicit Aside(QObject* parent = nullptr) : QObject(parent) {}
    ~Aside() override
    {
        giveUp();
        for (QThread* thread : m_threads) thread->wait();
    }

    bool busy() const { return m_wanted && *m_wanted; }
    void giveUp()
    {
        if (m_wanted) *m_wanted = false;
    }

    // `work` is done in a thread of its own and must own what it looks at; `then` follows in
    // this one, unless the work was given up.
    template<typename Work, typename Then> void begin(Work work, Then then)
    {
        giveUp();
        auto const wanted = std::make_shared<std::atomic_bool>(true);
        m_wanted = wanted;
        QThread* const thread = QThread::create(
            [this, wanted, work = std::move(work), then = std::move(then)]() mutable {
                if (!*wanted) return;
                auto made = std::make_shared<decltype(work(Wanted{}))>(
                    work([wanted] { return wanted->load(); }));
                QMetaObject::invokeMethod(
                    this,
                    [wanted, made, then = std::move(then)]() mutable {
                        if (wanted->exchange(false)) then(std::move(*made));
                    },
                    Qt::QueuedConnection);
            });
        thread->setParent(this);
        m_threads.push_back(thread);
        connect(thread, &QThread::finished, this, [this, thread] {
            std::erase(m_threads, thread);
            thread->deleteLater();
        });
        thread->start(QThread::LowPriority);
    }

private:
    std::vector<QThread*> m_threads; // still at work
    std::shared_ptr<std::atomic_bool> m_wanted;
};

} // namespace ui
