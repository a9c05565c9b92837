#include "app/preferences.h"

#include "app/keeping/userfolder.h"
#include "ui/workbench.h"

#include <QSplitter>

#include <algorithm>
#include <filesystem>

namespace app {

namespace {

constexpr char const* themeKey = "theme";
constexpr char const* motionKey = "less-motion";
constexpr char const* languageKey = "language";
constexpr char const* windowKey = "window";
constexpr char const* paperKey = "paper";
constexpr char const* readingKey = "reading"; // of sheets: height of the staff, then helps
constexpr char const* viewKey = "view";
constexpr char const* standingKey = "standing";
constexpr char const* pupilKey = "pupil";
constexpr char const* namesPupilKey = "names-pupil";
constexpr char const* panesKey = "panes-shown";
constexpr char const* folderKey = "folder";
constexpr char const* recentKey = "recent";
constexpr char const* placesKey = "places";
constexpr char const* practiceKey = "practice";
constexpr char const* practicesKey = "practices";

// A splitter by its own name, or else by its place among the others.
QString paneKey(QSplitter const& splitter, qsizetype index)
{
    QString const name = splitter.objectName();
    return QStringLiteral("panes/") + (name.isEmpty() ? QString::number(index) : name);
}

QString ownFile()
{
    std::error_code failed;
    std::filesystem::create_directories(userFolder(), failed);
    return QString::fromStdString((userFolder() / "preferences.ini").string());
}

} // namespace

Preferences::Preferences() : Preferences(ownFile()) {}
Preferences::Preferences(QString const& file) : m_settings(file, QSettings::IniFormat) {}

ui::Theme Preferences::theme() const
{
    return ui::themeNamed(m_settings.value(themeKey).toString());
}
void Preferences::keepTheme(ui::Theme theme)
{
    m_settings.setValue(themeKey, ui::themeName(theme));
}

bool Preferences::lessMotion() const { return m_settings.value(motionKey).toBool(); }
void Preferences::keepLessMotion(bool less) { m_settings.setValue(motionKey, less); }

QString Preferences::language() const { return m_settings.value(languageKey).toString(); }
void Preferences::keepLanguage(QString const& language)
{
    m_settings.setValue(languageKey, language);
}

namespace {

QStringList readingAsWords(ui::Reading const& reading)
{
    QStringList words;
    if (reading.staffMm >= sheet::hugeStaffMm)
        words << QStringLiteral("huge");
    else if (reading.staffMm >= sheet::largeStaffMm)
        words << QStringLiteral("large");
    if (reading.helps.coloured) words << QStringLiteral("coloured");
    if (reading.helps.noteNames) words << QStringLiteral("names");
    if (reading.helps.stringPath) words << QStringLiteral("path");
    if (reading.placings == sheet::Placings::All) words << QStringLiteral("all-brackets");
    if (reading.placings == sheet::Placings::None) words << QStringLiteral("no-brackets");
    return words;
}

ui::Reading readingFrom(QStringList const& words)
{
    ui::Reading reading;
    if (words.contains(QStringLiteral("large"))) reading.staffMm = sheet::largeStaffMm;
    if (words.contains(QStringLiteral("huge"))) reading.staffMm = sheet::hugeStaffMm;
    reading.helps = {words.contains(QStringLiteral("coloured")),
                     words.contains(QStringLiteral("names")),
                     words.contains(QStringLiteral("path"))};
    if (words.contains(QStringLiteral("all-brackets"))) reading.placings = sheet::Placings::All;
    if (words.contains(QStringLiteral("no-brackets"))) reading.placings = sheet::Placings::None;
    return reading;
}

} // namespace

void Preferences::applyTo(ui::Workbench& workbench) const
{
    workbench.actions().lessMotion->setChecked(lessMotion());
    workbench.restoreGeometry(m_settings.value(windowKey).toByteArray());
    auto const splitters = workbench.findChildren<QSplitter*>();
    for (qsizetype i = 0; i < splitters.size(); ++i)
        splitters[i]->restoreState(m_settings.value(paneKey(*splitters[i], i)).toByteArray());
    workbench.restorePanes(m_settings.value(panesKey).toByteArray());
    if (m_settings.value(paperKey).toString() == QStringLiteral("letter"))
        workbench.setPaper(sheet::Paper::Letter);
    workbench.setReading(readingFrom(m_settings.value(readingKey).toStringList()));
    if (m_settings.value(viewKey).toString() == QStringLiteral("sheet"))
        workbench.setView(ui::Workbench::View::Sheet);
    ui::Actions const& actions = workbench.actions();
    actions.theme(theme())->setChecked(true);
}

void Preferences::keepFrom(ui::Workbench const& workbench)
{
    m_settings.setValue(windowKey, workbench.saveGeometry());
    auto const splitters = workbench.findChildren<QSplitter*>();
    for (qsizetype i = 0; i < splitters.size(); ++i)
        m_settings.setValue(paneKey(*splitters[i], i), splitters[i]->saveState());
    m_settings.setValue(panesKey, workbench.panes());
    m_settings.setValue(viewKey, workbench.actions().sheet->isChecked()
                                     ? QStringLiteral("sheet")
                                     : QStringLiteral("grid"));
    m_settings.setValue(readingKey, readingAsWords(workbench.reading()));
    m_settings.setValue(paperKey, workbench.paper() == sheet::Paper::Letter
                                      ? QStringLiteral("letter")
                                      : QStringLiteral("a4"));
}

std::string Preferences::standing() const
{
    return m_settings.value(standingKey).toString().toStdString();
}
void Preferences::keepStanding(std::string const& text)
{
    m_settings.setValue(standingKey, QString::fromStdString(text));
}

QString Preferences::pupil() const { return m_settings.value(pupilKey).toString(); }
void Preferences::keepPupil(QString const& name) { m_settings.setValue(pupilKey, name); }
bool Preferences::namesPupil() const { return m_settings.value(namesPupilKey).toBool(); }
void Preferences::keepNamesPupil(bool names) { m_settings.setValue(namesPupilKey, names); }

ui::HarpSound Preferences::harpSound() const
{
    ui::HarpSound const usual;
    auto const text = [this](char const* key, QString const& otherwise) {
        return m_settings.value(key, otherwise).toString();
    };
    ui::HarpSound sound;
    sound.font = text("sound/font", usual.font);
    double const a4 = m_settings.value("sound/a4", usual.a4).toDouble();
    if (a4 >= 430 && a4 <= 450) sound.a4 = a4;
    sound.temperament = text("sound/temperament", usual.temperament);
    sound.halo = std::clamp(m_settings.value("sound/halo", usual.halo).toInt(), 0, 100);
    sound.midiIn = text("midi/in", usual.midiIn);
    sound.midiOut = text("midi/out", usual.midiOut);
    return sound;
}

void Preferences::keepHarpSound(ui::HarpSound const& sound)
{
    m_settings.setValue("sound/font", sound.font);
    m_settings.setValue("sound/a4", sound.a4);
    m_settings.setValue("sound/temperament", sound.temperament);
    m_settings.setValue("sound/halo", sound.halo);
    m_settings.setValue("midi/in", sound.midiIn);
    m_settings.setValue("midi/out", sound.midiOut);
}

// One entry for each tune, the latest first: "name<tab>settings".
QByteArray Preferences::practice(QString const& tune) const
{
    for (QString const& entry : m_settings.value(practicesKey).toStringList())
        if (entry.section('\t', 0, 0) == tune) return entry.section('\t', 1).toUtf8();
    return {};
}

QByteArray Preferences::practice() const
{
    return m_settings.value(practiceKey).toString().toUtf8();
}

void Preferences::keepPractice(QString const& tune, QByteArray const& settings)
{
    QString const text = QString::fromUtf8(settings);
    m_settings.setValue(practiceKey, text);
    if (tune.isEmpty()) return;
    QStringList all = m_settings.value(practicesKey).toStringList();
    erase_if(all, [&](QString const& entry) { return entry.section('\t', 0, 0) == tune; });
    all.prepend(tune + '\t' + text);
    m_settings.setValue(practicesKey, QStringList(all.mid(0, placesRemembered)));
}

QString Preferences::folder() const { return m_settings.value(folderKey).toString(); }
void Preferences::keepFolder(QString const& folder) { m_settings.setValue(folderKey, folder); }

QStringList Preferences::recent() const { return m_settings.value(recentKey).toStringList(); }

void Preferences::addRecent(QString const& file)
{
    QStringList files = recent();
    files.removeAll(file);
    files.prepend(file);
    m_settings.setValue(recentKey, QStringList(files.mid(0, filesRemembered)));
}

void Preferences::forgetRecent() { m_settings.remove(recentKey); }

// One entry for each tune, the latest first: "name<tab>position".
std::optional<int> Preferences::place(QString const& tune) const
{
    for (QString const& entry : m_settings.value(placesKey).toStringList())
        if (entry.section('\t', 0, 0) == tune) return entry.section('\t', 1).toInt();
    return std::nullopt;
}

void Preferences::keepPlace(QString const& tune, int position)
{
    QStringList places = m_settings.value(placesKey).toStringList();
    erase_if(places, [&](QString const& entry) { return entry.section('\t', 0, 0) == tune; });
    places.prepend(tune + '\t' + QString::number(position));
    m_settings.setValue(placesKey, QStringList(places.mid(0, placesRemembered)));
}

bool Preferences::toldBefore(QString const& caution)
{
    QString const key = QStringLiteral("told/") + caution;
    bool const before = m_settings.value(key).toBool();
    if (!before) m_settings.setValue(key, true);
    return before;
}

} // namespace app
