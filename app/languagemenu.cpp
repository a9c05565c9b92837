#include "app/languagemenu.h"

#include "app/language.h"
#include "app/preferences.h"
#include "ui/workbench.h"

#include <QActionGroup>
#include <QCoreApplication>
#include <QLocale>
#include <QMenu>
#include <QMenuBar>

namespace app {

namespace {

QString tr(char const* text) { return QCoreApplication::translate("LanguageMenu", text); }

// The menu in which the theme is chosen.
QMenu* viewMenu(ui::Workbench& workbench)
{
    for (QAction* entry : workbench.menuBar()->actions())
        if (entry->menu() && entry->menu()->actions().contains(workbench.actions().strongDark))
            return entry->menu();
    return nullptr;
}

} // namespace

void speakAsChosen()
{
    std::string const chosen = Preferences().language().toStdString();
    if (chosen.empty() || !speak(chosen)) (void)speak(languageOfSystem());
}

void addLanguageMenu(ui::Workbench& workbench, Preferences& preferences)
{
    QMenu* const view = viewMenu(workbench);
    if (view == nullptr) return;
    view->addSeparator();
    QMenu* const menu = view->addMenu(tr("Lang&uage"));
    auto* const one = new QActionGroup(menu);
    auto const add = [&](QString const& name, QString const& language) {
        QAction* const action = menu->addAction(name);
        action->setCheckable(true);
        action->setChecked(preferences.language() == language);
        one->addAction(action);
        QObject::connect(
            action, &QAction::triggered, &workbench, [&workbench, &preferences, language] {
                preferences.keepLanguage(language);
                workbench.tellDone(tr("The language changes when Sallow is started again."));
            });
    };
    add(tr("As the s&ystem"), {});
    for (std::string const& language : languages()) {
        QString const code = QString::fromStdString(language);
        // Qt names the English of one country.
        add(language == "en" ? QStringLiteral("English") : QLocale(code).nativeLanguageName(),
            code);
    }
}

} // namespace app
