#pragma once

#include "core/files/tables/tables.h"

#include "core/harp/model.h"

#include <QObject>

class QMenu;

namespace ui {

class Header;
class Session;

// Fills the menus under the header's buttons from the program's tables and hands the arranger's
// choice to the session.
class ChoiceMenus final : public QObject {
    Q_OBJECT
public:
    // `form`: the menu of introduction, times and ending.
    ChoiceMenus(Session& session, files::Tables tables, Header& header, QMenu* form,
                QObject* parent);

signals:
    void harpKept(harp::HarpModel const& harp); // to be saved among the user's own

private:
    void editHarp();
    void compareKeys();
    void fillKeys();
    void fillHarps();
    void fillHands();
    void fillLevels();
    void fillStyles();
    void fillForm();
    void addTimes();
    void addSliders();
    void chooseHarp(std::string const& size, std::string const& tuning,
                    std::string const& leverFit);

    Session& m_session;
    files::Tables m_tables;
    Header& m_header;
    QMenu* m_form;
};

} // namespace ui
