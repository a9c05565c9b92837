#pragma once

#include "core/pattern/pattern.h"

#include <QObject>

namespace ui {

class Session;
class VariantPanel;

// The shapes on offer for the selected chord: listed with what they cost, looked at, heard and
// taken; one of the arranger's own; and why a pattern cannot be played there.
class ShapesOffered final : public QObject {
    Q_OBJECT
public:
    ShapesOffered(Session& session, VariantPanel& panel, QObject* parent);

    void show(bool ready); // not ready: no tune is shown

signals:
    void hearWanted(); // what is looked at now
    void leave();      // the keyboard goes back to the tune
    void keepPatternRequested(pattern::Pattern const& own); // in the arranger's own book

private:
    void showWhyNot();

    Session& m_session;
    VariantPanel& m_panel;
};

} // namespace ui
