#pragma once

namespace CLI {
class App;
}

namespace app {

// Each adds one verb to the program; running it leaves the exit status in `status`.
void declareArrange(CLI::App& program, int& status);
void declareBatch(CLI::App& program, int& status);
void declareWeigh(CLI::App& program, int& status);
void declareKeys(CLI::App& program, int& status);
void declarePatterns(CLI::App& program, int& status);
void declareDrill(CLI::App& program, int& status);
void declareHandout(CLI::App& program, int& status);
void declarePicture(CLI::App& program, int& status);
void declareCheck(CLI::App& program, int& status);

} // namespace app
