#pragma once

#include "app/besidewindow.h"
#include "ui/batchdialog.h"

#include <QString>

#include <optional>

namespace app {

// A folder of tunes arranged for the harp, hand and level that are chosen, by a second copy of
// this program: the window stays free, and cancelling leaves whole papers only.
class BatchRun final : public BesideWindow {
    Q_OBJECT
public:
    explicit BatchRun(Desk const& desk, QString program = {}); // none: the running one

    void open() override;

private:
    void start();
    void hear(QString const& line) override;
    void tellEnd(SecondCopy::End how) override;

    QPointer<ui::BatchDialog> m_dialog;
};

// One line that the program said: how far it is, or a snag, or what it could not arrange or
// read.
struct BatchLine {
    int done = 0; // 0: a trouble
    int all = 0;
    QString words;
    ui::BatchPlace place{};
};
std::optional<BatchLine> batchLine(QString const& line);

// Options for the harp, hand, level and manner of new tunes.
QStringList optionsFor(ui::Session const& session, files::Tables const& tables);

} // namespace app
