// Who may ask: this machine's own page and nobody else's.

#include "server/desk.h"

namespace toft::server {
namespace {

class Guard : public Desk {
protected:
    unsigned with_host(const std::string& host) const {
        Request made = request(Method::get, "/api/jobs");
        made.headers.host = host;
        return ask(made).status;
    }
};

TEST_F(Guard, OnlyNamesOfThisMachineAreBelieved) {
    EXPECT_EQ(with_host("localhost:8377"), 200u);
    EXPECT_EQ(with_host("LOCALHOST:8377"), 200u);
    EXPECT_EQ(with_host("127.0.0.1:8377"), 200u);
    EXPECT_EQ(with_host("[::1]:8377"), 200u);
    for (const char* other : {"evil.example:8377", "localhost", "localhost:8378", "127.0.0.1",
                              "localhost.evil.example:8377", "127.0.0.1:8377.evil.example",
                              "192.0.2.1:8377", "::1:8377", ""}) {
        EXPECT_EQ(with_host(other), 421u) << other;
    }
}

TEST_F(Guard, AHostIsNamedExactlyOnce) {
    Request none = request(Method::get, "/");
    none.headers.hosts = 0;
    Request twice = request(Method::get, "/");
    twice.headers.hosts = 2;
    EXPECT_EQ(ask(none).status, 400u);
    EXPECT_EQ(ask(twice).status, 400u);
}

TEST_F(Guard, WithLanItsNumericAddressesAreBelievedToo) {
    open_to_lan();
    EXPECT_EQ(with_host("192.0.2.1:8377"), 200u);
    EXPECT_EQ(with_host("192.0.2.2:8377"), 421u);
    EXPECT_EQ(with_host("toft.local:8377"), 421u) << "a name could be pointed here by anybody";
}

TEST_F(Guard, PagesOfOtherPlacesAreRefusedWhateverTheyAskFor) {
    for (const Method method : {Method::get, Method::post}) {
        Request made = request(method, "/api/jobs", method == Method::get ? "" : "{\"job\":{}}");
        for (const char* origin :
             {"https://evil.example", "http://localhost:9999", "null", "http://127.0.0.1:8377"}) {
            made.headers.origin = origin;
            EXPECT_EQ(ask(made).status, 403u) << origin;
        }
        made.headers.origin = "http://localhost:8377";
        EXPECT_LT(ask(made).status, 300u);
        made.headers.fetch_site = "same-origin";
        EXPECT_LT(ask(made).status, 300u);
        for (const char* site : {"cross-site", "same-site"}) {
            made.headers.fetch_site = site;
            EXPECT_EQ(ask(made).status, 403u) << site;
        }
    }
}

TEST_F(Guard, WhatChangesNeedsTheHeaderThatNoFormCanSend) {
    for (const Method method : {Method::post, Method::put, Method::remove}) {
        Request made = request(method, "/api/jobs/studio", "{}");
        for (const char* page : {"", "0", "1, 1"}) {
            made.headers.page = page;
            EXPECT_EQ(ask(made).status, 403u) << page;
        }
    }
    kept(demo());
    Request made = request(Method::post, "/api/jobs/studio/undo", "{\"base\":1}");
    made.headers.page = "";
    EXPECT_EQ(ask(made).status, 403u);
    EXPECT_EQ(get("/api/jobs/studio")["revision"], 1);
}

TEST_F(Guard, BodiesMustBeWhatTheySayAndUnpacked) {
    Request made = request(Method::post, "/api/jobs", "{\"job\":{}}");
    for (const char* type : {"", "text/plain", "application/x-www-form-urlencoded",
                             "multipart/form-data", "application/jsonp"}) {
        made.headers.type = type;
        EXPECT_EQ(ask(made).status, 415u) << type;
    }
    made.headers.type = "application/json; charset=utf-8";
    EXPECT_EQ(ask(made).status, 201u);
    for (const char* packed : {"gzip", "br", "deflate", "identity, gzip"}) {
        made.headers.encoding = packed;
        EXPECT_EQ(ask(made).status, 415u) << packed;
    }
}

TEST_F(Guard, EveryAnswerForbidsReadingFramingAndGuessing) {
    Request elsewhere = request(Method::get, "/");
    elsewhere.headers.origin = "https://evil.example";
    for (const Response& answer :
         {ask(request(Method::get, "/")), ask(request(Method::get, "/api/jobs")),
          ask(request(Method::get, "/nothing")), ask(elsewhere)}) {
        EXPECT_EQ(header(answer, "X-Content-Type-Options"), "nosniff");
        EXPECT_EQ(header(answer, "Cross-Origin-Resource-Policy"), "same-origin");
        EXPECT_EQ(header(answer, "Referrer-Policy"), "no-referrer");
        const std::string policy = header(answer, "Content-Security-Policy");
        EXPECT_NE(policy.find("frame-ancestors 'none'"), std::string::npos);
        EXPECT_NE(policy.find("default-src 'self'"), std::string::npos);
        EXPECT_EQ(policy.find("script-src 'self' 'unsafe-inline'"), std::string::npos);
        for (const auto& [name, value] : answer.headers) {
            EXPECT_EQ(name.find("Access-Control"), std::string::npos) << name;
        }
    }
}

TEST_F(Guard, MethodsNobodyServesAreNamedAsSuch) {
    EXPECT_EQ(ask(request(Method::other, "/")).status, 405u);
    const Response wrong = ask(request(Method::remove, "/api/jobs"));
    EXPECT_EQ(wrong.status, 405u);
    EXPECT_EQ(header(wrong, "Allow"), "GET, POST");
    EXPECT_EQ(ask(request(Method::post, "/")).status, 405u);
}

TEST_F(Guard, PathsThatStepOutAreNoPaths) {
    for (const char* path :
         {"/../etc/passwd", "/..%2f..%2fetc/passwd", "/%2e%2e/%2e%2e/etc/passwd", "/a/../../b",
          "/.%2e/x", "/..\\..\\x", "/%5c..%5cx", "/a%00b", "/%", "/%2", "/%zz", "/%c0%ae", "a", "",
          "http://localhost:8377/", "*", "/./x", "/api/jobs?find=a&find=b"}) {
        EXPECT_EQ(ask(request(Method::get, path)).status, 400u) << path;
    }
    for (const char* path : {"/etc/passwd", "//etc/passwd", "/api", "/api/", "/api/jobs/",
                             "/API/jobs", "/index.html/x", "/toft.sqlite"}) {
        EXPECT_EQ(ask(request(Method::get, path)).status, 404u) << path;
    }
}

TEST_F(Guard, AQueryThatIsNotUnderstoodIsNotPassedOver) {
    EXPECT_EQ(ask(request(Method::get, "/api/jobs?archive=1")).status, 400u);
    EXPECT_EQ(ask(request(Method::get, "/api/jobs?archived=1&find=sh%C3%A9d")).status, 200u);
}

TEST_F(Guard, DeepWideAndDoubledJsonIsRefusedByName) {
    const auto code = [&](const std::string& body) {
        const Json told = done(ask(request(Method::post, "/api/jobs", body)), 422);
        return told["faults"][0]["code"].get<std::string>();
    };
    EXPECT_EQ(code("{\"job\":" + std::string(1000, '[') + std::string(1000, ']') + "}"),
              "too-deep");
    EXPECT_EQ(code("{\"job\":{},\"job\":{}}"), "duplicate-key");
    EXPECT_EQ(code("{\"job\":"), "not-json");
    EXPECT_EQ(code("{\"job\":{\"title\":\"\xff\"}}"), "not-json");
    EXPECT_EQ(code("[]"), "wrong-kind");
    EXPECT_EQ(code("{}"), "missing");
    EXPECT_EQ(code("{\"job\":{},\"jbo\":1}"), "unknown-key");
    std::string wide = "{\"job\":{";
    for (int i = 0; i < 300; ++i) wide += (i ? ",\"" : "\"") + std::to_string(i) + "\":1";
    EXPECT_EQ(code(wide + "}}"), "too-many");
}

}  // namespace
}  // namespace toft::server
