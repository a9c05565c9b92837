#pragma once

#include "ui/papers.h"
#include "ui/readingmenu.h"

#include "core/base/fault.h"
#include "core/sheet/papers/handout.h"

#include <QObject>

#include <optional>

namespace ui {

class Session;
class SheetPanel;

// The paper of the open tune: of which kind, of which size and for whom. It is engraved when it
// is looked at.
class OpenPaper final : public QObject {
    Q_OBJECT
public:
    OpenPaper(Session& session, SheetPanel& panel, QObject* parent);

    PaperKind kind() const { return m_kind; }
    void setKind(PaperKind kind);
    sheet::Paper size() const { return m_style.paper; }
    void setSize(sheet::Paper size);
    void setReading(Reading const& reading); // how large, with what helps
    Reading reading() const { return readingOf(m_style); }
    void setPupil(QString const& pupil); // whom it names; empty: none
    void setSlowing(perform::Slowing slowing); // of the tune's end, where it is told of
    // Its pages, as they are exported and printed. None: the music font is not there.
    std::optional<sheet::Document> pages();
    // What a handout begins with. Only while a tune is open.
    sheet::HandoutWish handoutWish() const;
    std::optional<sheet::MusicFont> const& font(); // told where it is not there

    void setLookedAt(bool looked);
    void show(); // afresh. Costs nothing while it is not looked at
    void editWords(QWidget* window);

signals:
    void refused(base::Fault const& fault);
    void sizeChanged();

private:
    arrange::Arrangement forPupil(arrange::Arrangement arrangement) const;

    Session& m_session;
    SheetPanel& m_panel;
    PaperKind m_kind = PaperKind::Arrangement;
    sheet::SheetStyle m_style;
    QString m_pupil;
    std::optional<sheet::MusicFont> m_font;
    bool m_lookedAt = false;
    bool m_outdated = true; // drawn afresh when it is next looked at
};

} // namespace ui
