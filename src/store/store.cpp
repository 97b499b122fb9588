#include "store/store.h"

#include "store/migrations.h"

#include <sys/stat.h>

#include <cerrno>
#include <cstring>

namespace toft::store {

Store::Store(std::unique_ptr<Database> database) : database_(std::move(database)) {}
Store::~Store() = default;
Store::Store(Store&& other) noexcept = default;
Store& Store::operator=(Store&& other) noexcept = default;

Outcome<Store> open(const std::string& path, const Options& options) {
    auto database = Database::open(path, options, newest_version());
    if (!database) return failed(database.error());
    return Store(std::move(*database));
}

Outcome<std::string> usual_path(const std::string& xdg_data_home, const std::string& home) {
    const auto absolute = [](const std::string& path) { return path.substr(0, 1) == "/"; };
    if (absolute(xdg_data_home)) return xdg_data_home + "/toft/toft.sqlite";
    if (absolute(home)) return home + "/.local/share/toft/toft.sqlite";
    return failed({"no-home",
                   "",
                   "there is no home folder to keep jobs in: give the path of a file",
                   "",
                   {}});
}

Faults make_folder_of(const std::string& path) {
    for (auto end = path.find('/', 1); end != std::string::npos; end = path.find('/', end + 1)) {
        const std::string folder = path.substr(0, end);
        if (mkdir(folder.c_str(), S_IRWXU) == 0 || errno == EEXIST) continue;
        if (struct stat there{}; stat(folder.c_str(), &there) == 0) continue;  // read-only above
        return {{"cannot-open",
                 "",
                 "the folder " + folder + " cannot be made: " + std::strerror(errno) +
                     ". Give the path of a file in a folder of yours",
                 "",
                 {}}};
    }
    return {};
}

}  // namespace toft::store
