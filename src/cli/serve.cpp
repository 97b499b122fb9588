// toft serve: the page and all behind it, on this machine.

#include "cli/command_parts.h"
#include "cli/commands.h"
#include "cli/files.h"
#include "cli/picture_file.h"
#include "server/start.h"
#include "store/store.h"

#include <cstdlib>

#include <unistd.h>

namespace toft::cli {

namespace {

std::string variable(const char* name) {
    const char* value = std::getenv(name);
    return value ? value : "";
}

Outcome<std::string> store_path(const std::string& folder) {
    if (!folder.empty()) return folder + "/toft.sqlite";
    return store::usual_path(variable("XDG_DATA_HOME"), variable("HOME"));
}

/// By whatever the desktop opens addresses with; where there is none, nothing happens.
void open_page(const server::Running& running) {
    if (fork() != 0) return;
    const int nothing = fileno(std::fopen("/dev/null", "r+"));
    dup2(nothing, STDOUT_FILENO);
    dup2(nothing, STDERR_FILENO);
    execlp("xdg-open", "xdg-open", running.address.c_str(), nullptr);
    _exit(127);
}

void say(const std::string& text) {
    print(text);
    std::fflush(stdout);
}

}  // namespace

int serve(const ServeArguments& arguments) {
    const auto path = store_path(arguments.data);
    if (!path) return fault_exit(path.error(), false, "nothing is served:");
    const Faults unmade = store::make_folder_of(*path);
    if (!unmade.empty()) return fault_exit(unmade, false, "nothing is served:");
    server::Start start;
    start.port = static_cast<std::uint16_t>(arguments.port);
    start.lan = arguments.lan;
    start.store = *path;
    start.fonts = installed_fonts();
    start.milliseconds = now_milliseconds;
    start.say = say;
    if (arguments.open) start.ready = open_page;
    const Faults faults = server::serve(start);
    return faults.empty() ? static_cast<int>(done)
                          : fault_exit(faults, false, "nothing is served:");
}

}  // namespace toft::cli
