#pragma once
// The program running beside the test, which may feed it, send it signals and kill it.

#include "cli/program.h"

#include <sys/wait.h>

#include <cerrno>
#include <chrono>
#include <csignal>
#include <string>
#include <thread>
#include <vector>

#include <fcntl.h>
#include <unistd.h>

namespace toft::cli {

/// Where a process reads and writes.
struct Ends {
    int in = -1;            ///< read by it; -1 for nothing
    int out = -1;           ///< written by it; -1 for nowhere
    std::string error;      ///< file
    std::string directory;  ///< it starts in
};

class Process {
public:
    Process(std::vector<std::string> command, const Ends& ends) {
        std::vector<char*> words;
        for (std::string& word : command) words.push_back(word.data());
        words.push_back(nullptr);
        id_ = fork();
        if (id_ != 0) return;
        const int nothing = open("/dev/null", O_RDWR);
        const int error = open(ends.error.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0644);
        dup2(ends.in < 0 ? nothing : ends.in, STDIN_FILENO);
        dup2(ends.out < 0 ? nothing : ends.out, STDOUT_FILENO);
        dup2(error < 0 ? nothing : error, STDERR_FILENO);
        // Whoever runs the tests in the background may have had these ignored.
        std::signal(SIGINT, SIG_DFL);
        std::signal(SIGTERM, SIG_DFL);
        if (chdir(ends.directory.c_str()) == 0) execvp(words.front(), words.data());
        _exit(127);
    }
    ~Process() {
        if (id_ > 0) {
            kill(id_, SIGKILL);
            wait();
        }
    }
    Process(const Process&) = delete;
    Process& operator=(const Process&) = delete;

    void send(int signal) const { kill(id_, signal); }

    /// Exit code, or minus the signal that ended it.
    int wait() {
        int status = 0;
        while (waitpid(id_, &status, 0) < 0 && errno == EINTR) {
        }
        id_ = -1;
        return WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status);
    }

    /// Whether it still runs.
    bool runs() const {
        siginfo_t info{};
        return waitid(P_PID, static_cast<id_t>(id_), &info, WEXITED | WNOHANG | WNOWAIT) == 0 &&
               info.si_pid == 0;
    }

private:
    pid_t id_ = -1;
};

/// A pipe whose ends programs do not inherit by chance.
struct Pipe {
    int read = -1, write = -1;
    Pipe() {
        int ends[2];
        if (pipe2(ends, O_CLOEXEC) != 0) std::abort();
        read = ends[0];
        write = ends[1];
    }
    ~Pipe() {
        close_read();
        close_write();
    }
    Pipe(const Pipe&) = delete;
    Pipe& operator=(const Pipe&) = delete;
    void close_read() { shut(read); }
    void close_write() { shut(write); }

private:
    static void shut(int& end) {
        if (end >= 0) close(end);
        end = -1;
    }
};

/// Waits until `so`, a minute at most; whether it came to be.
template <class Condition>
bool soon(const Condition& so) {
    for (int i = 0; i < 12000; ++i) {
        if (so()) return true;
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
    return false;
}

}  // namespace toft::cli
