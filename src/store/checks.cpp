#include "store/checks.h"

#include "store/fact_places.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace toft::store {

namespace {

constexpr std::size_t longest_file_name = 100;  // bytes of a file's name

void note(Faults& faults, const char* code, const std::string& pointer, std::string says) {
    faults.push_back({code, pointer, std::move(says), "", {}});
}

void check_words(const std::string& words, const std::string& pointer, Faults& faults,
                 std::size_t most = longest_words) {
    if (words.size() <= most) return;
    note(faults, "too-long", pointer,
         fmt::format("{} bytes of text; write at most {}", words.size(), most));
}

/// What a client calls a thing before it is kept; there may be no such name.
void check_id(const std::string& id, const std::string& pointer, Faults& faults) {
    if (!id.empty() && !good_id(id)) note(faults, "bad-id", pointer, bad_id(id).says);
}

bool is_time(const std::string& at) {
    constexpr std::string_view form = "0000-00-00T00:00:00Z";
    return at.size() == form.size() &&
           std::equal(at.begin(), at.end(), form.begin(),
                      [](char c, char f) { return f == '0' ? c >= '0' && c <= '9' : c == f; });
}

bool has_control(const std::string& text) {
    return std::any_of(text.begin(), text.end(),
                       [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; });
}

bool begins(const std::string& bytes, std::string_view with, std::size_t from = 0) {
    return bytes.size() >= from + with.size() && bytes.compare(from, with.size(), with) == 0;
}

bool is_of_type(const NewPhoto& photo) {
    using namespace std::string_view_literals;
    if (photo.type == "image/jpeg") return begins(photo.bytes, "\xff\xd8\xff"sv);
    if (photo.type == "image/png") return begins(photo.bytes, "\x89PNG\r\n\x1a\n"sv);
    if (photo.type == "image/webp") {
        return begins(photo.bytes, "RIFF"sv) && begins(photo.bytes, "WEBP"sv, 8);
    }
    return false;
}

bool good_name(const std::string& name) {
    return !name.empty() && name.size() <= longest_file_name && name.front() != '.' &&
           std::all_of(name.begin(), name.end(), [](char c) {
               return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
                      c == '.' || c == '-' || c == '_';
           });
}

}  // namespace

void check_act(const Act& act, std::size_t most_words, const std::string& pointer, Faults& faults) {
    if (!act.at.empty() && !is_time(act.at)) {
        note(faults, "bad-time", pointer,
             fmt::format("\"{}\" is no time: write it as 2026-11-29T11:05:00Z",
                         act.at.substr(0, longest_author)));
    }
    if (act.by.size() > longest_author || has_control(act.by)) {
        note(faults, "bad-author", pointer,
             fmt::format("an author's name has at most {} bytes and no control characters",
                         longest_author));
    }
    check_words(act.what, pointer, faults, most_words);
}

void check_photo(const NewPhoto& photo, const std::string& pointer, Faults& faults) {
    if (photo.bytes.empty() || photo.bytes.size() > largest_photo) {
        note(faults, "photo-size", pointer,
             fmt::format("a photo of {} bytes; send at least one and at most {}",
                         photo.bytes.size(), largest_photo));
    } else if (!is_of_type(photo)) {
        faults.push_back({"photo-type",
                          pointer,
                          "the bytes are no photo of this kind: send a JPEG, PNG or WebP and say "
                          "which",
                          "",
                          {"image/jpeg", "image/png", "image/webp"}});
    }
    if (photo.fact.size() > longest_fact || (!photo.fact.empty() && photo.fact.front() != '/')) {
        note(faults, "bad-pointer", pointer,
             fmt::format("a fact is named by a JSON pointer of at most {} bytes", longest_fact));
    }
    check_words(photo.note, pointer, faults);
    check_id(photo.id, pointer, faults);
}

void check_reading(const NewReading& reading, const std::string& pointer, Faults& faults) {
    if (reading.fact.empty() || reading.fact.size() > longest_fact) {
        note(faults, "bad-pointer", pointer,
             fmt::format("say what was measured in 1 to {} bytes", longest_fact));
    }
    if (!std::isfinite(reading.value)) {
        note(faults, "bad-value", pointer, "a reading is a number: say what the instrument showed");
    }
    for (const std::string* words : {&reading.unit, &reading.instrument, &reading.note}) {
        check_words(*words, pointer, faults);
    }
    check_id(reading.id, pointer, faults);
}

void check_issue(const NewIssue& issue, const std::string& pointer, Faults& faults) {
    if (issue.files.empty()) note(faults, "no-files", pointer, "an issue has at least one file");
    std::set<std::string> names;
    for (const PaperFile& file : issue.files) {
        if (!good_name(file.name)) {
            note(faults, "bad-name", pointer,
                 fmt::format("\"{}\" is no name of a file: use letters, digits, dots, - and _",
                             file.name));
        } else if (!names.insert(file.name).second) {
            note(faults, "bad-name", pointer,
                 fmt::format("two files are called {}: name one otherwise", file.name));
        }
        const std::string type = paper_type(file.name);
        if (type.empty() || file.type != type) {
            note(faults, "bad-type", pointer,
                 fmt::format("{} is no paper of this type: there are .pdf, .csv, .dxf and .xlsx, "
                             "each of its own type",
                             file.name.substr(0, longest_file_name)));
        }
        check_words(file.title, pointer, faults);
    }
}

}  // namespace toft::store
