#pragma once
// A folder of its own for each test, jobs short enough to read, and other processes.

#include "store/store.h"

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <functional>
#include <string>

namespace toft::store::testing {

/// In memory where the system keeps such a folder: a commit to a disk takes long.
inline std::filesystem::path quick_place() {
    return access("/dev/shm", W_OK) == 0 ? std::filesystem::path("/dev/shm")
                                         : std::filesystem::temp_directory_path();
}

/// Gone with all it holds at the end.
class Folder {
public:
    explicit Folder(const std::filesystem::path& place = quick_place()) {
        std::string name = (place / "toft-store-XXXXXX").string();
        path_ = mkdtemp(name.data());
    }
    ~Folder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    std::string operator/(const std::string& name) const { return (path_ / name).string(); }
    std::string store() const { return *this / "toft.sqlite"; }
    std::string path() const { return path_.string(); }

private:
    std::filesystem::path path_;
};

inline Act act(const std::string& what = "", const std::string& by = "Ann",
               const std::string& at = "2026-11-29T11:00:00Z") {
    return {at, by, what};
}

/// The store of a folder, opened.
inline Store opened(const Folder& folder, const Options& options = {}) {
    auto store = open(folder.store(), options);
    if (!store) ADD_FAILURE() << store.error().front().says;
    return std::move(*store);
}

/// A job that holds little more than one figure.
inline std::string job(int load, const std::string& title = "Studio") {
    return R"({"title":")" + title + R"(","load_w":)" + std::to_string(load) + "}";
}

template <class T>
std::string code(const Outcome<T>& outcome) {
    return outcome ? "" : outcome.error().front().code;
}
inline std::string code(const Faults& faults) { return faults.empty() ? "" : faults.front().code; }

template <class T>
std::string says(const Outcome<T>& outcome) {
    return outcome ? "" : outcome.error().front().says;
}

/// Runs something in a process of its own; what it returns is its exit code.
inline pid_t beside(const std::function<int()>& work) {
    const pid_t child = fork();
    if (child == 0) _exit(work());
    return child;
}

inline int exit_of(pid_t child) {
    int status = 0;
    waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

inline std::string bytes_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

inline void write_file(const std::string& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary) << bytes;
}

}  // namespace toft::store::testing
