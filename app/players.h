#pragma once

#include "app/desk.h"
#include "core/files/work/player.h"

#include <QObject>
#include <QString>

#include <filesystem>
#include <vector>

namespace app {

// The list of pupils and its menu: whom a tune is arranged for. Choosing another makes the open
// tune fit that one's harp, hand and level, in one step; choosing the arranger herself comes back
// to hers. The list is kept on this machine alone.
class Players final : public QObject {
    Q_OBJECT
public:
    explicit Players(Desk const& desk);

    // The pupil that is arranged for; empty: the arranger herself.
    QString current() const { return m_current; }
    std::vector<files::Player> const& pupils() const { return m_pupils; }

signals:
    void chosen(QString const& name); // the open tune is for this one now

private:
    void fill();
    void choose(QString const& name);
    void add();
    void change();
    void remove();
    void keep();
    void tellPapers();
    files::Player asShown(std::string name) const;
    files::Player herself() const;

    Desk m_desk;
    std::filesystem::path m_file;
    std::vector<files::Player> m_pupils;
    QString m_current;
    bool m_readable = true; // a list that cannot be read is not written over
};

} // namespace app
