// The engine is asked for a bounded time, and says when it was stopped.

#include "server/desk.h"
#include "server/long_job.h"

namespace toft::server {
namespace {

class LongWork : public Desk {
protected:
    /// Every look at the clock finds that much later, in milliseconds.
    void hurry(double (*clock)()) { office_->parts.milliseconds = clock; }
    static double slow() { return clock_ += longest_work; }
    static double quick() { return clock_ += 0.001; }

    /// Of an answer of design: the word stands there only where it is so.
    static bool stopped(const Json& answer) { return answer.at("search").value("stopped", false); }

    /// Answer to a verb over a stream of events.
    Json streamed(const std::string& verb, const Json& body) const {
        Request made = request(Method::post, "/api/verbs/" + verb, body.dump());
        made.headers.accept = "text/event-stream";
        const std::string heard = ask(made).channel->take().text;
        const std::string mark = "event: result\ndata: ";
        const std::size_t at = heard.find(mark);
        if (at == std::string::npos) return Json();
        return Json::parse(heard.substr(at + mark.size()), nullptr, false);
    }
};

TEST_F(LongWork, ThatTakesTooLongStopsAndSaysSo) {
    const Json body = {{"job", long_job()}};
    hurry(slow);
    const Json answer = done(ask(Method::post, "/api/verbs/design", body));
    EXPECT_TRUE(stopped(answer)) << answer["search"].dump();
    EXPECT_TRUE(stopped(streamed("design", body)));
}

TEST_F(LongWork, WithinItsTimeIsNotStopped) {
    const Json body = {{"job", demo()}};
    hurry(quick);
    EXPECT_FALSE(stopped(done(ask(Method::post, "/api/verbs/design", body))));
    EXPECT_EQ(done(ask(Method::post, "/api/verbs/levers", body))["stopped"], false);
    hurry(slow);
    EXPECT_EQ(done(ask(Method::post, "/api/verbs/levers", body))["stopped"], true);
    EXPECT_EQ(streamed("levers", body)["stopped"], true);
}

TEST_F(LongWork, ForPapersThatTakesTooLongMakesNone) {
    kept(long_job());
    hurry(slow);
    const Json refused = done(ask(Method::post, "/api/jobs/studio/papers", Json::object()), 422);
    EXPECT_EQ(refused["faults"][0]["code"], "stopped");
    EXPECT_TRUE(get("/api/jobs/studio/papers")["issues"].empty());
}

}  // namespace
}  // namespace toft::server
