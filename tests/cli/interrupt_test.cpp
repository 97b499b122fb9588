// Long work: how far it has come at a terminal, and Ctrl-C, which leaves the best so far.

#include "cli/process.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cstdlib>

namespace toft::cli {
namespace {

using Json = nlohmann::json;

/// Sixty pillars on three phases, one behind the other, each with an electrode of its own on TT:
/// many seconds of work on any machine.
std::string long_job() {
    Json job = Json::parse(text_of(example("lapwing-field")));
    job["intake"]["earthing"] = "TT";
    job["intake"]["ze_ohm"] = {{"value", 40}, {"basis", "measured"}};
    job["wishes"] = Json::object();
    job["buildings"] = {{{"id", "house"}, {"at", "origin"}}};
    job["runs"] = Json::array();
    for (int i = 1; i <= 60; ++i) {
        const std::string id = "pillar " + std::to_string(i);
        job["buildings"].push_back(
            {{"id", id},
             {"load_w", 100},
             {"electrode",
              {{"rods", 1}, {"resistance_ohm", {{"value", 60 + i}, {"basis", "measured"}}}}}});
        job["runs"].push_back(
            {{"id", "run " + std::to_string(i)},
             {"from", i == 1 ? "house" : "pillar " + std::to_string(i - 1)},
             {"to", id},
             {"phases", 3},
             {"legs", {{{"method", "buried direct"}, {"length_m", 14 + i * 7 % 23}}}}});
    }
    return job.dump();
}

/// The end of a terminal that a program writes to, and what comes out of it.
class Terminal {
public:
    Terminal() : ours_(posix_openpt(O_RDWR | O_NOCTTY | O_CLOEXEC)) {
        if (ours_ < 0 || grantpt(ours_) != 0 || unlockpt(ours_) != 0) std::abort();
        fcntl(ours_, F_SETFL, O_NONBLOCK);
    }
    ~Terminal() { close(ours_); }
    Terminal(const Terminal&) = delete;
    Terminal& operator=(const Terminal&) = delete;

    std::string path() const { return ptsname(ours_); }

    /// All that was written so far.
    const std::string& seen() {
        char block[4096];
        for (ssize_t got = 0; (got = read(ours_, block, sizeof block)) > 0;) {
            seen_.append(block, static_cast<std::size_t>(got));
        }
        return seen_;
    }

private:
    int ours_;
    std::string seen_;
};

class LongWork : public ::testing::Test {
protected:
    std::string path(const std::string& name) const { return program_.folder() / name; }
    int out(const std::string& name) const {
        return open(path(name).c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0644);
    }

    Program program_;
    std::string job_ = program_.file("job.json", long_job());
};

TEST_F(LongWork, AtATerminalItSaysHowFarItIsAndCtrlCStopsIt) {
    Terminal terminal;
    const int screen = out("screen");
    Process process({program_path(), "design", job_}, {-1, screen, terminal.path(), "/"});
    ASSERT_TRUE(soon([&] {
        return terminal.seen().find("Ctrl-C: the best so far") != std::string::npos;
    })) << terminal.seen();
    process.send(SIGINT);
    EXPECT_EQ(process.wait(), 6);
    close(screen);
    const std::string text = text_of(path("screen"));
    const bool nothing = text.find("BEFORE IT WAS STOPPED") != std::string::npos;
    const bool something = text.find("topped") != std::string::npos;
    EXPECT_TRUE(nothing || something) << text.substr(0, 600);
    EXPECT_NE(text.find("BEFORE ANYONE ACTS ON THIS"), std::string::npos) << "the whole screen";
}

TEST_F(LongWork, WhereNobodyLooksItIsSilentAndTheAnswerSaysThatItWasStopped) {
    const int answer = out("answer");
    Process process({program_path(), "design", job_, "--json"}, {-1, answer, path("error"), "/"});
    std::this_thread::sleep_for(std::chrono::milliseconds(1500));
    ASSERT_TRUE(process.runs());
    process.send(SIGTERM);
    EXPECT_EQ(process.wait(), 6);
    close(answer);
    EXPECT_EQ(text_of(path("error")), "");
    const Json json = Json::parse(text_of(path("answer")));
    EXPECT_EQ(json["format"], "toft-answer/1");
    EXPECT_EQ(json["search"]["stopped"], true);
}

}  // namespace
}  // namespace toft::cli
