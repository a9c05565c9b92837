#pragma once

#include "ui/harpsounddialog.h"
#include "ui/theme.h"

#include <QSettings>
#include <QStringList>

#include <optional>
#include <string>

namespace ui {
class Workbench;
}

namespace app {

// What the program remembers from one day to the next, in the user's folder: theme, window and
// panes, paper, the harp, hand, level and manner that new tunes are met with, the pupil, the
// files that were open and the place in each. Nothing of the music, which is kept in files.
class Preferences {
public:
    static constexpr int filesRemembered = 12;
    static constexpr int placesRemembered = 300;

    Preferences();
    explicit Preferences(QString const& file); // for tests

    ui::Theme theme() const;
    void keepTheme(ui::Theme theme);

    bool lessMotion() const;
    void keepLessMotion(bool less);

    QString language() const; // such as "de"; empty: as the system
    void keepLanguage(QString const& language);

    // Window, panes, view, paper and the mark at the theme in the menu. What is not readable is
    // passed over.
    void applyTo(ui::Workbench& workbench) const;
    void keepFrom(ui::Workbench const& workbench);

    // The arranger's own harp and so on, see core/files/work/player.h; empty at the first start.
    std::string standing() const;
    void keepStanding(std::string const& text);

    // The pupil that is arranged for; empty: the arranger herself.
    QString pupil() const;
    void keepPupil(QString const& name);
    bool namesPupil() const; // on papers
    void keepNamesPupil(bool names);

    ui::HarpSound harpSound() const;
    void keepHarpSound(ui::HarpSound const& sound);

    // What is set for practice, see ui::Transport::settings(): in a tune, which has a name of the
    // caller's, and the last of all. Empty: nothing yet.
    QByteArray practice(QString const& tune) const;
    QByteArray practice() const;
    void keepPractice(QString const& tune, QByteArray const& settings);

    QString folder() const; // of the last file
    void keepFolder(QString const& folder);
    QStringList recent() const; // files, the latest first
    void addRecent(QString const& file);
    void forgetRecent();

    // Where the arranger was in a tune, which has a name of the caller's.
    std::optional<int> place(QString const& tune) const;
    void keepPlace(QString const& tune, int position);

    // Whether a caution has been told already; the first question about each says no.
    bool toldBefore(QString const& caution);

private:
    QSettings m_settings;
};

} // namespace app
