#pragma once

#include "core/files/tables/tables.h"

#include "core/harp/model.h"

#include <QObject>

namespace ui {

class Header;
class Session;

// Fills the menus under the header's buttons from the program's tables and hands the arranger's
// choice to the session.
class ChoiceMenus final : public QObject {
    Q_OBJECT
public:
    ChoiceMenus(Session& session, files::Tables tables, Header& header, QObject* parent);

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
    void addSliders();
    void chooseHarp(std::string const& size, std::string const& tuning,
                    std::string const& leverFit);

    Session& m_session;
    files::Tables m_tables;
    Header& m_header;
};

} // namespace ui
