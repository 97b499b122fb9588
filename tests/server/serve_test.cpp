// toft serve as a user starts, stops and kills it.

#include "cli/process.h"
#include "http/json.h"
#include "server/client.h"

#include <gtest/gtest.h>

#include <fstream>

namespace toft::server {
namespace {

using cli::Ends;
using cli::Pipe;
using cli::Process;

/// toft serve on a free port with its store in a folder of the test.
class Served {
public:
    explicit Served(const cli::Program& program, const std::string& port = "0")
        : process_({cli::program_path(), "serve", "--port", port, "--data",
                    (program.folder() / "data").string()},
                   Ends{-1, pipe_.write, (program.folder() / "error").string(),
                        program.folder().string()}) {
        pipe_.close_write();
        const std::string mark = "http://localhost:";
        char c = 0;
        while (read(pipe_.read, &c, 1) == 1) {
            said_ += c;
            const std::size_t at = said_.find(mark);
            if (at != std::string::npos && c == '\n') {
                port_ = std::atoi(said_.c_str() + at + mark.size());
                break;
            }
        }
    }

    int port() const { return port_; }
    Process& process() { return process_; }
    const std::string& said() const { return said_; }

    std::string ask(const std::string& method, const std::string& target,
                    const std::string& body = "") const {
        Client client(port_);
        client.say(method + " " + target + " HTTP/1.1\r\nHost: 127.0.0.1:" + std::to_string(port_) +
                   "\r\ntoft-page: 1\r\nContent-Type: application/json\r\n" +
                   "Content-Length: " + std::to_string(body.size()) + "\r\n\r\n" + body);
        return client.answer();
    }
    Json state(const std::string& id) const {
        return Json::parse(body_of(ask("GET", "/api/jobs/" + id)), nullptr, false);
    }

private:
    Pipe pipe_;
    Process process_;
    std::string said_;
    int port_ = 0;
};

TEST(Serve, BeginsWithTheDemoJobOnceAndNeverAgain) {
    const cli::Program program;
    {
        Served served(program);
        ASSERT_NE(served.port(), 0) << served.said();
        const Json jobs = Json::parse(body_of(served.ask("GET", "/api/jobs")))["jobs"];
        ASSERT_EQ(jobs.size(), 1u);
        const Json demo = Json::parse(cli::text_of(cli::example("demo")));
        EXPECT_EQ(served.state(jobs[0]["id"])["job"], demo);
        served.ask("POST", "/api/jobs/" + jobs[0]["id"].get<std::string>() + "/archived",
                   "{\"archived\":true}");
        served.process().send(SIGTERM);
        EXPECT_EQ(served.process().wait(), 0);
    }
    Served again(program);
    EXPECT_EQ(Json::parse(body_of(again.ask("GET", "/api/jobs")))["jobs"].size(), 0u);
}

TEST(Serve, EndsAtOnceAndCleanlyWhenAskedTo) {
    for (const int signal : {SIGINT, SIGTERM}) {
        const cli::Program program;
        Served served(program);
        Client idle(served.port());
        ASSERT_TRUE(idle.open());
        served.process().send(signal);
        EXPECT_EQ(served.process().wait(), 0) << signal;
    }
}

TEST(Serve, APortThatIsTakenIsNamedWithTheRemedy) {
    const cli::Program program;
    const Served served(program);
    const cli::Ran second =
        program.run({"serve", "--port", std::to_string(served.port()), "--data", "other"});
    EXPECT_EQ(second.code, 2);
    EXPECT_NE(second.error.find("is taken"), std::string::npos) << second.error;
    EXPECT_NE(second.error.find("--port"), std::string::npos) << second.error;
}

TEST(Serve, AFileThatIsNoStoreIsRefusedAndNotSaidToKeepJobs) {
    const cli::Program program;
    std::ofstream(program.folder() / "toft.sqlite") << "no store";
    const cli::Ran refused =
        program.run({"serve", "--port", "0", "--data", program.folder().string()});
    EXPECT_EQ(refused.code, 2);
    EXPECT_NE(refused.error.find("nothing is served"), std::string::npos) << refused.error;
    EXPECT_EQ(refused.out, "");
}

TEST(Serve, KilledBetweenSavesItLosesNothingThatWasAnswered) {
    const cli::Program program;
    int port = 0;
    long revision = 0;
    Json job = {{"format", "toft-job/1"}, {"title", "0"}};
    for (int round = 0; round < 4; ++round) {
        Served served(program, std::to_string(port));
        port = served.port();
        ASSERT_NE(port, 0) << served.said();
        if (round == 0) {
            ASSERT_EQ(
                status_of(served.ask("POST", "/api/jobs", Json{{"id", "a"}, {"job", job}}.dump())),
                201);
            revision = 1;
        }
        const Json state = served.state("a");
        EXPECT_EQ(state["revision"], revision);
        EXPECT_EQ(state["job"], job);
        for (int i = 0; i < 5; ++i) {
            job["title"] = std::to_string(round) + "." + std::to_string(i);
            ASSERT_EQ(status_of(served.ask("PUT", "/api/jobs/a",
                                           Json{{"base", revision}, {"job", job}}.dump())),
                      200);
            ++revision;
        }
        served.process().send(SIGKILL);
        EXPECT_EQ(served.process().wait(), -SIGKILL);
    }
    Served last(program);
    EXPECT_EQ(last.state("a")["job"], job);
    EXPECT_EQ(Json::parse(body_of(last.ask("GET", "/api/jobs/a/revisions")))["revisions"].size(),
              21u);
    const std::string undone =
        last.ask("POST", "/api/jobs/a/undo", "{\"base\":" + std::to_string(revision) + "}");
    EXPECT_EQ(Json::parse(body_of(undone))["job"]["title"], "3.3");
}

TEST(Serve, TwoSaversAtOnceLoseNothing) {
    const cli::Program program;
    Served served(program);
    Json job = {{"format", "toft-job/1"}, {"title", "t"}, {"intake", Json::object()}};
    served.ask("POST", "/api/jobs", Json{{"id", "a"}, {"job", job}}.dump());
    const auto saver = [&](const char* key, double step) {
        long base = 1;
        Json mine = job;
        for (int i = 1; i <= 20; ++i) {
            mine["intake"][key] = i * step;
            const Json state = Json::parse(body_of(
                served.ask("PUT", "/api/jobs/a", Json{{"base", base}, {"job", mine}}.dump())));
            if (!state.contains("job")) {
                ADD_FAILURE() << state.dump();
                return;
            }
            base = state["revision"];
            mine = state["job"];
        }
    };
    std::thread other([&] { saver("ze_ohm", 0.01); });
    saver("ipf_ka", 0.1);
    other.join();
    const Json end = served.state("a")["job"]["intake"];
    EXPECT_EQ(end["ze_ohm"], 20 * 0.01);
    EXPECT_EQ(end["ipf_ka"], 20 * 0.1);
}

}  // namespace
}  // namespace toft::server
