#pragma once

namespace app {

// Whether a window can be shown: a display is named, or a Qt platform is asked for.
bool displayThere();

// Says how to work without a display; answers the exit status.
int sayNoDisplay();

// Opens the workbench on the files named by the call, and stays until it is closed.
int openWorkbench(int argc, char** argv);

} // namespace app
