// Other devices: let in by whoever stands before the machine, and by nobody else.

#include "door/addresses.h"
#include "door/code_picture.h"
#include "door/secret.h"
#include "server/desk.h"

#include <set>

namespace toft::server {
namespace {

class Lan : public Desk {
protected:
    Lan() {
        open_to_lan();
        office_->show_code();
    }

    std::string code() const { return office_->pairing.shown(office_->seconds()); }
    Response knock(const std::string& said, const std::string& name = "Phone") const {
        return ask(from_lan(
            request(Method::post, "/api/pair", Json{{"code", said}, {"name", name}}.dump())));
    }
    /// The cookie as the device sends it back.
    std::string cookie(const Response& let_in) const {
        const std::string set = header(let_in, "Set-Cookie");
        return set.substr(0, set.find(';'));
    }
    unsigned jobs_with(const std::string& cookie) const {
        Request made = from_lan(request(Method::get, "/api/jobs"));
        made.headers.cookie = cookie;
        return ask(made).status;
    }
    void wait(double seconds) { clock_ += seconds * 1000; }
};

TEST_F(Lan, WithoutPairingADeviceSeesWhereToTypeTheCodeAndNothingElse) {
    for (const char* path :
         {"/api/jobs", "/api/prices", "/api/export", "/api/openapi.json", "/api/pair/picture",
          "/api/pair", "/api/nothing", "/toft.wasm", "/page/any.js"}) {
        EXPECT_EQ(ask(from_lan(request(Method::get, path))).status, 401u) << path;
    }
    EXPECT_EQ(ask(from_lan(request(Method::post, "/api/verbs/about", "{}"))).status, 401u);
    const Response view = ask(from_lan(request(Method::get, "/")));
    EXPECT_EQ(view.status, 200u);
    EXPECT_NE(view.lasting.find("Pair this device"), std::string_view::npos);
    EXPECT_EQ(view.lasting.find("<script>"), std::string_view::npos) << "the policy forbids it";
    EXPECT_EQ(ask(from_lan(request(Method::get, "/pair.js"))).status, 200u);
    const Response about = ask(from_lan(request(Method::get, "/api/about")));
    EXPECT_FALSE(Json::parse(about.body)["paired"].get<bool>());
    EXPECT_EQ(ask(request(Method::get, "/api/jobs")).status, 200u) << "this machine needs no code";
}

TEST_F(Lan, TheRightCodeLetsInAndTheDeviceStaysPairedAfterARestart) {
    const Response let_in = knock(code());
    ASSERT_EQ(let_in.status, 204u) << let_in.body;
    const std::string set = header(let_in, "Set-Cookie");
    EXPECT_NE(set.find("HttpOnly"), std::string::npos);
    EXPECT_NE(set.find("SameSite=Strict"), std::string::npos);
    EXPECT_EQ(jobs_with(cookie(let_in)), 200u);
    EXPECT_EQ(jobs_with("other=1; " + cookie(let_in) + "; more=2"), 200u);
    open();
    open_to_lan();
    EXPECT_EQ(jobs_with(cookie(let_in)), 200u);
    const std::string path = (program_.folder() / "toft.sqlite").string();
    const std::string secret = cookie(let_in).substr(std::string("toft-pair-8377=").size());
    for (const char* ending : {"", "-wal"}) {
        EXPECT_EQ(cli::text_of(path + ending).find(secret), std::string::npos)
            << "the store keeps what the device shows only as a digest";
    }
}

TEST_F(Lan, ForgedCookiesOpenNothing) {
    const std::string right = cookie(knock(code()));
    std::string wrong = right;
    wrong.back() = wrong.back() == '0' ? '1' : '0';
    for (const std::string& forged :
         {std::string("toft-pair-8377="), std::string("toft-pair-8377=0"), wrong, right + "0",
          "x" + right, "toft-pair-8377=" + digest(right.substr(15)),
          "toft-pair-8378=" + right.substr(15), "toft-pair=" + right.substr(15)}) {
        EXPECT_EQ(jobs_with(forged), 401u) << forged;
    }
}

TEST_F(Lan, ACodeIsTypedAsPeopleTypeAndWorksOnce) {
    std::string typed = code();
    for (char& c : typed) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c;
    typed.replace(typed.find('-'), 1, " ");
    EXPECT_EQ(knock(typed).status, 204u);
    EXPECT_EQ(knock(typed).status, 403u) << "the next device gets a code of its own";
    EXPECT_EQ(knock(code()).status, 204u);
}

TEST_F(Lan, AfterAFewWrongCodesEachTryWaitsLongerAndTheRightOneToo) {
    const std::string right = code();
    for (int i = 1; i < free_tries; ++i) EXPECT_EQ(knock("AAAA-AAAA").status, 403u);
    double wait_for = first_wait;
    for (int round = 0; round < 5; ++round) {
        const Response wrong = knock("AAAA-AAAA");
        EXPECT_EQ(wrong.status, 403u);
        EXPECT_EQ(header(wrong, "Retry-After"), std::to_string(static_cast<int>(wait_for)));
        EXPECT_EQ(knock(right).status, 429u) << "nothing is looked at while waiting";
        wait(wait_for - 0.5);
        EXPECT_EQ(knock(right).status, 429u);
        wait(1);
        wait_for *= 2;
    }
    EXPECT_EQ(knock(right).status, 204u);
}

TEST_F(Lan, ACodeExpiresAndTheMachineMakesANewOne) {
    const std::string old = code();
    wait(code_life + 1);
    EXPECT_EQ(code(), "");
    EXPECT_EQ(knock(old).status, 403u);
    const Json renewed = done(ask(Method::post, "/api/pair/renew", {}));
    EXPECT_NE(renewed["code"], old);
    EXPECT_EQ(renewed["address"], "http://192.0.2.1:8377/");
    EXPECT_EQ(knock(renewed["code"]).status, 204u);
}

TEST_F(Lan, WhoKnocksAfterTheCodeExpiredBringsUpANewOneOnTheScreenAndOnlyOne) {
    said_.clear();
    EXPECT_EQ(knock("AAAA-AAAA").status, 403u);
    EXPECT_EQ(said_, "") << "the code still holds";
    wait(code_life + 1);
    EXPECT_EQ(said_, "") << "nobody knocked: the screen is left alone";
    const Response late = knock("AAAA-AAAA");
    EXPECT_EQ(late.status, 403u);
    EXPECT_NE(late.body.find("a new one is on the screen"), std::string::npos);
    ASSERT_NE(code(), "");
    EXPECT_NE(said_.find("type the code " + code()), std::string::npos);
    said_.clear();
    EXPECT_EQ(knock("AAAA-AAAA").status, 403u);
    EXPECT_EQ(said_, "");
    EXPECT_EQ(knock(code()).status, 204u);
}

TEST_F(Lan, ACodeThatExpiresForgivesNoWrongTries) {
    for (int i = 0; i < free_tries; ++i) EXPECT_EQ(knock("AAAA-AAAA").status, 403u);
    wait(code_life + 1);
    EXPECT_EQ(knock("AAAA-AAAA").status, 403u) << "expired";
    const Response wrong = knock("AAAA-AAAA");
    EXPECT_EQ(header(wrong, "Retry-After"), std::to_string(static_cast<int>(2 * first_wait)));
}

TEST_F(Lan, CookiesOfAnotherServerOfThisMachineStandInNobodysWay) {
    const std::string right = cookie(knock(code()));
    EXPECT_EQ(right.substr(0, 15), "toft-pair-8377=");
    EXPECT_EQ(jobs_with("toft-pair-9000=1; " + right), 200u);
    EXPECT_EQ(jobs_with("toft-pair-8377=1; " + right), 200u) << "an older one of the same name";
}

TEST_F(Lan, AForgottenDeviceHearsNothingMore) {
    kept(demo());
    const auto hear = [&](const std::string& cookie) {
        Request made = from_lan(request(Method::get, "/api/jobs/studio/events"));
        made.headers.cookie = cookie;
        const Response stream = ask(made);
        EXPECT_EQ(stream.status, 200u);
        return stream.channel;
    };
    const auto lost = hear(cookie(knock(code(), "Lost")));
    const auto other = hear(cookie(knock(code(), "Other")));
    for (const auto& channel : {lost, other}) EXPECT_FALSE(channel->take().last);
    const Json devices = get("/api/pair/devices")["devices"];
    ASSERT_EQ(devices.size(), 2u);
    for (const Json& device : devices) {
        if (device["name"] != "Lost") continue;
        const std::string path = "/api/pair/devices/" + device["device"].get<std::string>();
        EXPECT_EQ(ask(Method::remove, path, {}).status, 204u);
    }
    Json changed = demo();
    changed["title"] = "Changed";
    done(ask(Method::put, "/api/jobs/studio", {{"base", 1}, {"job", changed}}));
    const Channel::Taken after = lost->take();
    EXPECT_TRUE(after.last);
    EXPECT_EQ(after.text, "");
    const Channel::Taken heard = other->take();
    EXPECT_FALSE(heard.last);
    EXPECT_NE(heard.text.find("\"revision\":2"), std::string::npos);
}

TEST_F(Lan, TheCodeNeverComesIntoAnAddress) {
    const Response view = ask(from_lan(request(Method::get, "/")));
    EXPECT_NE(view.lasting.find("<form id=\"form\" method=\"post\">"), std::string_view::npos)
        << "where the script does not run the form is sent as it stands";
}

TEST_F(Lan, OnlyTheMachineItselfShowsTheCodeAndForgetsDevices) {
    Request paired = from_lan(request(Method::get, "/api/pair"));
    paired.headers.cookie = cookie(knock(code(), "Ada's phone"));
    EXPECT_EQ(ask(paired).status, 403u);
    const Json devices = get("/api/pair/devices")["devices"];
    ASSERT_EQ(devices.size(), 1u);
    EXPECT_EQ(devices[0]["name"], "Ada's phone");
    EXPECT_EQ(paired.headers.cookie.find(devices[0]["device"].get<std::string>()),
              std::string::npos);
    const std::string path = "/api/pair/devices/" + devices[0]["device"].get<std::string>();
    EXPECT_EQ(ask(Method::remove, path, {}).status, 204u);
    EXPECT_EQ(ask(Method::remove, path, {}).status, 404u);
    EXPECT_EQ(jobs_with(paired.headers.cookie), 401u);
    open();
    open_to_lan();
    EXPECT_EQ(jobs_with(paired.headers.cookie), 401u) << "forgotten for good";
}

TEST_F(Lan, WithoutLanNothingPairs) {
    office_->door.lan = false;
    EXPECT_EQ(ask(Method::post, "/api/pair", {{"code", code()}}).status, 404u);
    EXPECT_EQ(ask(Method::get, "/api/pair", {}).status, 404u);
}

TEST(Codes, NoTwoLettersOfACodeAreMistakenForOneAnother) {
    const std::string letters = code_letters;
    for (const std::string alike : {"0OQ", "1IL", "2Z", "5S", "8B", "UV"}) {
        int seen = 0;
        for (const char c : alike) seen += letters.find(c) != std::string::npos;
        EXPECT_LE(seen, 1) << alike;
    }
    std::set<std::string> codes;
    Pairing pairing;
    for (int i = 0; i < 200; ++i) codes.insert(pairing.renew(0));
    EXPECT_EQ(codes.size(), 200u);
    for (const std::string& one : codes) EXPECT_EQ(one.size(), code_length + 1);
}

TEST(Codes, EveryLetterComesAboutAsOften) {
    std::map<char, int> count;
    for (const char c : random_letters(23000, code_letters)) ++count[c];
    EXPECT_EQ(count.size(), 23u);
    for (const auto& [letter, times] : count) {
        EXPECT_GT(times, 800) << letter;  // 1000 are expected, 31 is the standard deviation
        EXPECT_LT(times, 1200) << letter;
    }
}

// As `b2sum -l 256` of GNU coreutils 9.1 prints them.
TEST(Codes, DigestsAreThoseOfBlake2b) {
    EXPECT_EQ(digest(""), "0e5751c026e543b2e8ab2eb06099daa1d1e5df47778f7787faab45cdf12fe3a8");
    EXPECT_EQ(digest("abc"), "bddd813c634239723171ef3fee98579b94964e3bb1cb3e427262c8c068d52319");
}

TEST(Codes, ThePictureIsSquareHasItsMarginAndSaysTheAddress) {
    const std::string drawn = code_for_terminal("http://192.0.2.1:8377/#pair=34679ACD");
    std::size_t lines = 0;
    for (const char c : drawn) lines += c == '\n';
    EXPECT_EQ(lines, (29u + 8u + 1u) / 2) << "version 3 is 29 modules wide, with four around it";
    EXPECT_NE(code_as_svg("http://192.0.2.1:8377/").find("viewBox=\"0 0 33 33\""),
              std::string::npos)
        << "version 2 is 25 modules wide";
}

TEST(Codes, OwnAddressesAreNumericAndNoneIsTheLoopback) {
    const auto addresses = own_addresses();
    if (addresses.empty()) GTEST_SKIP() << "this machine has no address on a network";
    for (const std::string& address : addresses) {
        EXPECT_EQ(address.find_first_not_of("0123456789abcdef.:"), std::string::npos) << address;
        EXPECT_NE(address.substr(0, 4), "127.");
        EXPECT_NE(address, "::1");
    }
}

/// A real connection over an address of the network, where the machine has one.
TEST(Codes, AConnectionFromTheNetworkIsNotTakenForThisMachine) {
    const auto addresses = own_addresses();
    if (addresses.empty() || addresses.front().find(':') != std::string::npos) {
        GTEST_SKIP() << "this machine has no address on a network";
    }
    Serving server({}, true);
    Client client(server.port(), addresses.front());
    ASSERT_TRUE(client.open());
    client.say("GET /api/jobs HTTP/1.1\r\nHost: " + addresses.front() + ":" +
               std::to_string(server.port()) + "\r\n\r\n");
    EXPECT_EQ(status_of(client.answer()), 401);
    EXPECT_EQ(status_of(server.ask("GET", "/api/jobs")), 200);
    EXPECT_NE(server.said().find("type the code"), std::string::npos);
    Serving closed;
    EXPECT_FALSE(Client(closed.port(), addresses.front()).open())
        << "without --lan nothing listens there";
}

}  // namespace
}  // namespace toft::server
