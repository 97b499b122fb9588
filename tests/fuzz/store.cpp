// Any bytes brought into a store: all of them come in or none, whatever they are; what came in goes
// out again and into another store as the same text.

#include "store/store.h"

#include "fuzz/change.h"

#include <unistd.h>

#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <string_view>

namespace {

using namespace toft;
using namespace toft::store;

void require(bool holds, const char* what) {
    if (holds) return;
    std::fprintf(stderr, "does not hold: %s\n", what);
    std::abort();
}

const Act act{"2026-11-29T11:00:00Z", "Ann", "brought in"};

std::string job_of(int load) {
    return R"({"title":"Studio","load_w":)" + std::to_string(load) + "}";
}

/// For the files of this process, in memory where the system keeps such a place; gone at its end.
class Folder {
public:
    Folder() {
        const auto place = access("/dev/shm", W_OK) == 0 ? std::filesystem::path("/dev/shm")
                                                         : std::filesystem::temp_directory_path();
        path_ = (place / "toft-fuzz-XXXXXX").string();
        require(mkdtemp(path_.data()) != nullptr, "a folder can be made");
    }
    ~Folder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    const std::string& path() const { return path_; }

private:
    std::string path_;
};

const std::string& folder() {
    static const Folder made;
    return made.path();
}

Store fresh_store(const std::string& name) {
    const std::string path = folder() + "/" + name;
    for (const char* end : {"", "-wal", "-shm", "-journal"}) {
        std::error_code ignored;
        std::filesystem::remove(path + end, ignored);
    }
    auto made = open(path);
    require(made.has_value(), "a store can be opened");
    return std::move(*made);
}

/// A job with a history, a photo, a reading and a paper; the own price book.
void fill(Store& store) {
    bool done = create(store, "a", job_of(1), act).has_value();
    done = done && save(store, {"a", 1, job_of(2)}, act);
    done = done && undo(store, "a", 2, act);
    done = done && save(store, {"a", 1, job_of(3)}, act);
    done = done && add_photo(store, {"a", "/load_w", "note", "image/jpeg", "\xff\xd8\xff x"}, act);
    done = done && add_reading(store, {"a", "/load_w", 0.1, "ohm", "no. 7", ""}, act);
    done = done && issue_papers(store, {"a", 3, {{"p.pdf", "P", "application/pdf", 0, "x"}}}, act);
    done = done && set_own_prices(store, {"mine", "x,y\n"}).empty();
    require(done, "a store can be filled");
}

std::string all_of(Store& store) {
    const auto text = export_all(store);
    require(text.has_value(), "a store can be taken out");
    return *text;
}

const std::string& filled() {
    static const std::string text = [] {
        Store store = fresh_store("filled");
        fill(store);
        return all_of(store);
    }();
    return text;
}

Outcome<std::vector<Imported>> bring(Store& store, std::string_view text) {
    int count = 0;
    return import_text(store, text, act, [&count] { return "fresh-" + std::to_string(++count); });
}

void goes_round(Store& store) {
    const std::string out = all_of(store);
    Store other = fresh_store("other");
    const auto again = bring(other, out);
    require(again.has_value(), "what a store gives out comes in elsewhere");
    require(all_of(other) == out, "and is the same there");
}

/// Into a store that holds something or nothing.
void brought_into(Store& store, std::string_view text) {
    const std::string before = all_of(store);
    const auto brought = bring(store, text);
    if (!brought) {
        require(!brought.error().empty(), "a refusal says why");
        require(all_of(store) == before, "what is refused leaves everything as it was");
        return;
    }
    bool written = false;
    for (const Imported& one : *brought) {
        written = written || one.written;
        require(load(store, one.id).has_value(), "each job that came in can be opened");
        require(revisions(store, one.id).has_value(), "and has its history");
    }
    // A price book alone may come in without any job.
    require(written || brought->empty() || all_of(store).size() >= before.size(),
            "nothing is lost by bringing in");
    goes_round(store);
}

}  // namespace

/// Changed here and there, what a store gives out mostly still is such a text.
extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size,
                                               std::size_t most, unsigned seed) {
    const std::string text(reinterpret_cast<const char*>(data), size);
    fuzz::Change change(seed);
    std::string changed = change.of(text.find("toft-store") == text.npos ? filled() : text);
    if (changed.empty() || changed.size() > most) changed = filled();
    if (seed % 16 == 0) changed.resize(changed.size() / 2);
    if (changed.size() > most) return size;
    std::copy(changed.begin(), changed.end(), data);
    return changed.size();
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    Store empty = fresh_store("empty");
    brought_into(empty, text);
    Store holds = fresh_store("holds");
    require(bring(holds, filled()).has_value(), "the filled store comes in");
    brought_into(holds, text);
    return 0;
}
