// Streams of events over real connections.

#include "http/json.h"
#include "server/client.h"
#include "server/long_job.h"

#include <gtest/gtest.h>

namespace toft::server {
namespace {

std::string demo_body() { return "{\"job\":" + cli::text_of(cli::example("demo")) + "}"; }

const std::string want_events = "Accept: text/event-stream\r\n";

TEST(Events, ASaveIsHeardOnAnotherConnection) {
    Serving server;
    ASSERT_EQ(
        status_of(server.ask("POST", "/api/jobs",
                             "{\"id\":\"a\",\"job\":" + cli::text_of(cli::example("demo")) + "}")),
        201);
    Client listener = server.client();
    listener.say(server.request("GET", "/api/jobs/a/events", "", want_events));
    EXPECT_NE(listener.until("\"revision\":1").find("text/event-stream"), std::string::npos);
    server.ask("PUT", "/api/jobs/a", "{\"base\":1,\"job\":{\"format\":\"toft-job/1\"}}");
    EXPECT_NE(listener.until("\"revision\":2").find("event: revision\ndata: {\"revision\":2"),
              std::string::npos);
}

TEST(Events, ASilentStreamShowsThatItLives) {
    Limits limits;
    limits.heartbeat = std::chrono::seconds(1);
    Serving server(limits);
    server.ask("POST", "/api/jobs", "{\"id\":\"a\",\"job\":{}}");
    Client listener = server.client();
    listener.say(server.request("GET", "/api/jobs/a/events"));
    EXPECT_NE(listener.until("\n: ").find("\n: "), std::string::npos);
}

TEST(Events, LongWorkTellsHowFarItIsAndEndsWithTheAnswer) {
    Serving server;
    Client client = server.client();
    client.say(server.request("POST", "/api/verbs/levers", demo_body(), want_events));
    const std::string heard = client.rest();
    const std::size_t result = heard.find("event: result\ndata: ");
    ASSERT_NE(result, std::string::npos) << heard;
    const Json answer = Json::parse(
        heard.substr(result + 20, heard.find("\n\n", result) - result - 20), nullptr, false);
    EXPECT_EQ(answer.value("format", ""), "toft-levers/1");
    const std::string plain = body_of(server.ask("POST", "/api/verbs/levers", demo_body()));
    EXPECT_EQ(Json::parse(plain), answer) << "the same answer both ways";
}

/// With one worker: what comes next is answered only once the work before it has stopped.
class OneWorker : public ::testing::TestWithParam<const char*> {};

TEST_P(OneWorker, WhoGoesAwayStopsTheWork) {
    Limits limits;
    limits.bench_threads = 1;
    Serving server(limits);
    const std::string body = Json{{"job", long_job()}}.dump();
    {
        Client client = server.client();
        client.say(server.request("POST", "/api/verbs/design", body, GetParam()));
        std::this_thread::sleep_for(std::chrono::milliseconds(300));
    }
    const double began = milliseconds();
    EXPECT_EQ(status_of(server.ask("POST", "/api/verbs/about", "{}")), 200);
    EXPECT_LT(milliseconds() - began, 20000);
}

INSTANTIATE_TEST_SUITE_P(Both, OneWorker, ::testing::Values("", "Accept: text/event-stream\r\n"));

TEST(Events, StoppingEndsStreams) {
    Serving server;
    server.ask("POST", "/api/jobs", "{\"id\":\"a\",\"job\":{}}");
    Client listener = server.client();
    listener.say(server.request("GET", "/api/jobs/a/events"));
    ASSERT_NE(listener.until("event: revision").find("event: revision"), std::string::npos);
    EXPECT_FALSE(listener.closed());
    const double began = milliseconds();
    server.end();
    listener.rest();
    EXPECT_TRUE(listener.closed());
    EXPECT_LT(milliseconds() - began, 10000) << "the grace is three seconds";
}

}  // namespace
}  // namespace toft::server
