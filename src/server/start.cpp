#include "server/start.h"

#include "door/addresses.h"
#include "door/secret.h"
#include "server/site.h"
#include "store/transfer.h"
#include "tables/embedded.h"

#include <fmt/format.h>

namespace toft::server {

namespace {

/// So that a first visitor finds something to look at.
Faults begin_with_demo(store::Store& store) {
    const auto begun = store::setting(store, "begun");
    if (!begun) return begun.error();
    if (*begun) return {};
    const auto jobs = store::jobs(store, {"", true});
    if (!jobs) return jobs.error();
    if (jobs->empty()) {
        const Bits128 bits = random_bits();
        const auto made = store::create(store, store::id_of(bits.high, bits.low),
                                        std::string(tables::embedded_text("examples/demo.json")),
                                        {now_text(), "toft", "the demo job"});
        if (!made) return made.error();
    }
    return store::set_setting(store, "begun", now_text());
}

Listening listening_of(const Start& start) {
    Listening listening;
    listening.port = start.port;
    listening.limits = start.limits;
    listening.signals = start.signals;
    if (start.lan) listening.addresses = {"0.0.0.0", "::"};
    return listening;
}

void say_where(const Start& start, Office& office) {
    start.say("jobs are kept in " + start.store + "\n");
    start.say(
        fmt::format("toft serves at http://localhost:{}/  (Ctrl-C ends it)\n", office.door.port));
    if (!office.door.lan) return;
    if (office.door.addresses.empty()) {
        start.say("This machine has no address on a network: no other device can reach it.\n");
        return;
    }
    start.say(
        "Anybody on this network can knock. What goes over it is not encrypted: use --lan only on "
        "a network you trust.\n");
    office.show_code();
}

}  // namespace

Faults serve(const Start& start) {
    Office office({[&start] { return store::open(start.store); }, start.fonts, start.say,
                   start.milliseconds});
    {
        auto store = office.stores.take();
        if (!store) return store.error();
        Faults faults = begin_with_demo(**store);
        if (faults.empty()) faults = office.devices.load(**store);
        if (!faults.empty()) return faults;
    }
    auto server = Server::open(listening_of(start));
    if (!server) return server.error();
    office.door.port = (*server)->port();
    office.door.lan = start.lan;
    if (start.lan) office.door.addresses = own_addresses();
    say_where(start, office);
    const PageFiles page = page_files();
    const Service service = service_of(office, page);
    if (start.ready) {
        start.ready({fmt::format("http://localhost:{}/", office.door.port),
                     [&server] { (*server)->stop(); }});
    }
    (*server)->run(service);
    return {};
}

}  // namespace toft::server
