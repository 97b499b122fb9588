#pragma once
// Runs the built program as a user would.

#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include <unistd.h>

namespace toft::cli {

/// What a run of the program left behind.
struct Ran {
    int code = -1;      ///< exit code; -1 when it did not leave by itself
    std::string out;    ///< standard output
    std::string error;  ///< standard error
};

inline std::string text_of(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

/// The program under test: the one built beside the tests, or that of the environment's
/// TOFT_PROGRAM.
inline std::string program_path() {
    const char* other = std::getenv("TOFT_PROGRAM");
    return other ? other : TOFT_BINARY;
}

/// Characters of UTF-8, each a place on the screen.
inline std::size_t characters(const std::string& line) {
    std::size_t count = 0;
    for (const char c : line) count += (static_cast<unsigned char>(c) & 0xC0u) != 0x80u ? 1 : 0;
    return count;
}

/// A folder of its own for each test, gone afterwards; the program runs in it.
class Program {
public:
    Program() {
        std::string name = (std::filesystem::temp_directory_path() / "toft-test-XXXXXX").string();
        if (!mkdtemp(name.data())) std::abort();
        folder_ = name;
    }
    ~Program() { std::filesystem::remove_all(folder_); }
    Program(const Program&) = delete;
    Program& operator=(const Program&) = delete;

    const std::filesystem::path& folder() const { return folder_; }

    /// Writes a file in the folder and gives its path.
    std::string file(const std::string& name, const std::string& text) const {
        std::ofstream(folder_ / name, std::ios::binary) << text;
        return (folder_ / name).string();
    }

    /// Runs the program on `arguments` with `input` to read.
    Ran run(const std::vector<std::string>& arguments, const std::string& input = "") const {
        std::string command = "cd " + quoted(folder_.string()) + " && " + quoted(program_path());
        for (const std::string& argument : arguments) command += " " + quoted(argument);
        const std::string in = file("in.tmp", input);
        command += " <" + quoted(in) + " >out.tmp 2>error.tmp";
        const int status = std::system(command.c_str());
        Ran ran;
        if (WIFEXITED(status)) ran.code = WEXITSTATUS(status);
        ran.out = text_of(folder_ / "out.tmp");
        ran.error = text_of(folder_ / "error.tmp");
        return ran;
    }

private:
    static std::string quoted(const std::string& text) {
        std::string out = "'";
        for (const char c : text) out += c == '\'' ? std::string("'\\''") : std::string(1, c);
        return out + "'";
    }

    std::filesystem::path folder_;
};

/// A job of examples/ by name.
inline std::string example(const std::string& name) {
    return std::string(TOFT_SOURCE_DIR) + "/examples/" + name + ".json";
}

}  // namespace toft::cli
