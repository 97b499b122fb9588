// Connections: what a client may cost the server, and what it may not.

#include "server/client.h"

#include <gtest/gtest.h>

#include <vector>

namespace toft::server {
namespace {

TEST(Http, TwoRequestsOnOneConnectionAreAnsweredInOrder) {
    Serving server;
    Client client = server.client();
    ASSERT_TRUE(client.open());
    client.say(server.request("GET", "/api/about") + server.request("GET", "/api/jobs"));
    EXPECT_NE(client.answer().find("\"program\":\"toft\""), std::string::npos);
    EXPECT_NE(client.answer().find("\"jobs\":["), std::string::npos);
    client.say(server.request("GET", "/nothing-here"));
    EXPECT_EQ(status_of(client.answer()), 404);
    client.say(server.request("GET", "/", "", "Connection: close\r\n"));
    EXPECT_EQ(status_of(client.answer()), 200);
    EXPECT_EQ(client.rest(), "") << "it was asked to close";
}

TEST(Http, HeadGivesTheHeadersOfGetAndNoBody) {
    Serving server;
    Client client = server.client();
    client.say(server.request("HEAD", "/api/jobs", "", "Connection: close\r\n"));
    const std::string answer = client.rest();
    EXPECT_EQ(status_of(answer), 200);
    EXPECT_EQ(body_of(answer), "");
    EXPECT_EQ(answer.find("Content-Length: 0"), std::string::npos);
}

TEST(Http, BodiesOverTheirRoutesLimitAreRefusedBeforeTheyAreSent) {
    Serving server;
    Client client = server.client();
    client.say("POST /api/jobs HTTP/1.1\r\nHost: " + server.host() +
               "\r\ntoft-page: 1\r\nContent-Type: application/json\r\n"
               "Content-Length: 1048577\r\n\r\n");
    EXPECT_EQ(status_of(client.answer()), 413);
    EXPECT_EQ(client.rest(), "") << "and the connection is closed";
}

TEST(Http, ChunkedBodiesOverTheLimitAreRefusedToo) {
    Serving server;
    Client client = server.client();
    client.say("POST /api/jobs HTTP/1.1\r\nHost: " + server.host() +
               "\r\ntoft-page: 1\r\nContent-Type: application/json\r\n"
               "Transfer-Encoding: chunked\r\n\r\n");
    const std::string chunk = "10000\r\n" + std::string(0x10000, ' ') + "\r\n";
    for (int i = 0; i < 17 && client.say(chunk); ++i) {
    }
    EXPECT_EQ(status_of(client.answer()), 413);
}

TEST(Http, AChunkedBodyWithinTheLimitIsTaken) {
    Serving server;
    Client client = server.client();
    client.say("POST /api/verbs/about HTTP/1.1\r\nHost: " + server.host() +
               "\r\ntoft-page: 1\r\nContent-Type: application/json\r\n"
               "Transfer-Encoding: chunked\r\n\r\n1\r\n{\r\n1\r\n}\r\n0\r\n\r\n");
    EXPECT_EQ(status_of(client.answer()), 200);
}

TEST(Http, WhoExpectsToBeToldToContinueIsTold) {
    Serving server;
    Client client = server.client();
    client.say("POST /api/verbs/about HTTP/1.1\r\nHost: " + server.host() +
               "\r\ntoft-page: 1\r\nContent-Type: application/json\r\nExpect: 100-continue\r\n"
               "Content-Length: 2\r\n\r\n");
    EXPECT_NE(client.until("\r\n\r\n").find("100 Continue"), std::string::npos);
    client.answer();
    client.say("{}");
    EXPECT_EQ(status_of(client.answer()), 200);
}

TEST(Http, EndlessHeadersAreCutOff) {
    Serving server;
    Client client = server.client();
    client.say("GET / HTTP/1.1\r\nHost: " + server.host() + "\r\n");
    const std::string line = "X-Long: " + std::string(1000, 'a') + "\r\n";
    int sent = 0;
    while (sent < 10000 && client.say(line)) ++sent;
    EXPECT_LT(sent, 10000) << "ten megabytes of headers were read";
    EXPECT_EQ(status_of(client.rest()), 431);
}

TEST(Http, WhatIsNoHttpIsToldSoAndClosed) {
    const char* const wrong[] = {
        "hello\r\n\r\n",
        "GET /\r\n\r\n",
        "GET / HTTP/9.9\r\nHost: a\r\n\r\n",
        "GET / HTTP/1.1\r\nNo colon here\r\n\r\n",
        "GET / HTTP/1.1\r\nContent-Length: -1\r\n\r\n",
        "GET / HTTP/1.1\r\nContent-Length: 2\r\nContent-Length: 3\r\n\r\n",
        "POST / HTTP/1.1\r\nContent-Length: 2\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n",
        "\x16\x03\x01\x02",
    };
    Serving server;
    for (const char* text : wrong) {
        Client client = server.client();
        client.say(text);
        client.say("\r\n\r\n");
        const std::string answer = client.rest();
        EXPECT_EQ(status_of(answer), 400) << text << " → " << answer;
    }
    EXPECT_EQ(status_of(server.ask("GET", "/api/about")), 200);
}

/// What is read of one connection until it is closed.
std::string all_said(const Serving& server, const std::string& text) {
    Client client = server.client();
    client.say(text);
    return client.rest();
}

TEST(Http, ABodyIsNeverTakenForTheNextRequest) {
    Serving server;
    const std::string hidden = "GET /api/jobs HTTP/1.1\r\nHost: " + server.host() + "\r\n\r\n";
    for (const char* coding :
         {"xchunked", "chunked, identity", "identity", "gzip, chunked", "chunked, chunked",
          "chunked\r\nTransfer-Encoding: chunked", "identity\r\nTransfer-Encoding: chunked", "",
          "\x0b"
          "chunked"}) {
        for (const char* version : {"1.1", "1.0"}) {
            const std::string answer =
                all_said(server, "POST /api/verbs/about HTTP/" + std::string(version) +
                                     "\r\nHost: " + server.host() +
                                     "\r\ntoft-page: 1\r\nContent-Type: application/json\r\n"
                                     "Transfer-Encoding: " +
                                     coding + "\r\n\r\n" + hidden);
            EXPECT_EQ(status_of(answer), 400) << coding << ": " << answer;
            EXPECT_EQ(answer.find("\"jobs\""), std::string::npos) << coding;
            EXPECT_EQ(answer.find("Date: "), answer.rfind("Date: ")) << coding << ": one answer";
        }
    }
    const std::string chunked = "POST /api/verbs/about HTTP/1.0\r\nHost: " + server.host() +
                                "\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n";
    EXPECT_EQ(status_of(all_said(server, chunked)), 400) << "HTTP/1.0 knows no transfer coding";
}

TEST(Http, TheCodingIsKnownInCapitalsToo) {
    Serving server;
    Client client = server.client();
    client.say("POST /api/verbs/about HTTP/1.1\r\nHost: " + server.host() +
               "\r\ntoft-page: 1\r\nContent-Type: application/json\r\n"
               "Transfer-Encoding: Chunked\r\n\r\n2\r\n{}\r\n0\r\n\r\n" +
               server.request("GET", "/api/jobs"));
    EXPECT_EQ(status_of(client.answer()), 200);
    EXPECT_NE(client.answer().find("\"jobs\":["), std::string::npos);
}

TEST(Http, AHeaderThatGoesOnInASecondLineIsRefused) {
    Serving server;
    const std::string begin = "GET /api/about HTTP/1.1\r\nHost: " + server.host();
    for (const char* more : {"\r\nX-A: 1\r\n b", "\r\nX-A: 1\r\n\tb", "\r\nX-A:\r\n b",
                             "\r\nTransfer-Encoding:\r\n chunked"}) {
        EXPECT_EQ(status_of(all_said(server, begin + more + "\r\n\r\n")), 400) << more;
    }
    Client client = server.client();
    const std::string body = "{\"job\":\r\n {}}";
    client.say(server.request("POST", "/api/verbs/check", body) +
               server.request("GET", "/api/about"));
    EXPECT_NE(status_of(client.answer()), 400) << "a body may begin its lines as it likes";
    EXPECT_EQ(status_of(client.answer()), 200);
}

TEST(Http, TwoHundredSlowClientsKeepNobodyWaiting) {
    Limits limits;
    limits.header_time = std::chrono::seconds(20);
    Serving server(limits);
    std::vector<Client> slow;
    for (int i = 0; i < 200; ++i) {
        slow.push_back(server.client());
        ASSERT_TRUE(slow.back().open());
        slow.back().say(i % 2 ? "GET / HTT" : server.request("GET", "/").substr(0, 60));
    }
    const double began = milliseconds();
    EXPECT_EQ(status_of(server.ask("GET", "/api/jobs")), 200);
    EXPECT_LT(milliseconds() - began, 5000);
}

TEST(Http, AHeaderAndABodyThatNeverComeCostAConnectionForABoundedTime) {
    Limits limits;
    limits.header_time = std::chrono::seconds(1);
    limits.body_time = std::chrono::seconds(1);
    limits.idle_time = std::chrono::seconds(1);
    Serving server(limits);
    Client head = server.client();
    head.say("GET / HTTP/1.1\r\nHost: ");
    Client body = server.client();
    std::string half = server.request("POST", "/api/verbs/about", "{}");
    half.pop_back();
    body.say(half);
    Client idle = server.client();
    EXPECT_EQ(head.rest(), "");
    EXPECT_EQ(body.rest(), "");
    EXPECT_EQ(idle.rest(), "");
}

TEST(Http, OneConnectionTooManyIsToldToComeAgain) {
    Limits limits;
    limits.connections = 3;
    Serving server(limits);
    std::vector<Client> open;
    for (int i = 0; i < 3; ++i) {
        open.push_back(server.client());
        open.back().say(server.request("GET", "/api/about"));
        ASSERT_EQ(status_of(open.back().answer()), 200);
    }
    Client fourth = server.client();
    const std::string answer = fourth.rest();
    EXPECT_EQ(status_of(answer), 503);
    EXPECT_NE(answer.find("Retry-After"), std::string::npos);
    open.pop_back();
    int status = 503;
    for (int i = 0; i < 500 && status == 503; ++i) status = status_of(server.ask("GET", "/"));
    EXPECT_EQ(status, 200) << "there is room again";
}

TEST(Http, MoreThanCanWaitInLineIsRefusedAndTheRestIsAnswered) {
    Limits limits;
    limits.bench_threads = 1;
    limits.waiting_bench = 1;
    Serving server(limits);
    const std::string body = "{\"job\": " + cli::text_of(cli::example("demo")) + "}";
    std::vector<Client> many;
    for (int i = 0; i < 20; ++i) {
        many.push_back(server.client());
        many.back().say(server.request("POST", "/api/verbs/first", body));
    }
    int done = 0;
    int refused = 0;
    for (Client& one : many) {
        const std::string answer = one.answer();
        done += status_of(answer) == 200;
        refused += status_of(answer) == 503 && answer.find("Retry-After: 1") != std::string::npos;
    }
    EXPECT_EQ(done + refused, 20);
    EXPECT_GE(done, 1);
    EXPECT_GE(refused, 1);
}

TEST(Http, StoppingLetsNobodyHang) {
    Serving server;
    Client idle = server.client();
    Client half = server.client();
    half.say("GET /");
    EXPECT_EQ(status_of(server.ask("GET", "/api/about")), 200);
    server.end();
    EXPECT_TRUE(server.faults().empty());
    EXPECT_EQ(idle.rest(), "");
}

}  // namespace
}  // namespace toft::server
