#include "ui/motion.h"

#include <QApplication>

namespace ui {

namespace {

constexpr char const* motionProperty = "lessMotion";

} // namespace

bool lessMotion() { return qApp != nullptr && qApp->property(motionProperty).toBool(); }

void setLessMotion(bool less)
{
    if (qApp == nullptr) return;
    qApp->setProperty(motionProperty, less);
    for (Qt::UIEffect const effect :
         {Qt::UI_AnimateMenu, Qt::UI_FadeMenu, Qt::UI_AnimateCombo, Qt::UI_AnimateTooltip,
          Qt::UI_FadeTooltip, Qt::UI_AnimateToolBox})
        if (less) QApplication::setEffectEnabled(effect, false);
}

} // namespace ui
