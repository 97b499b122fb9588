#include "store/checks.h"

#include "store/fact_places.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace toft::store {

namespace {

constexpr std::size_t longest_words = 2000;     // bytes of a note, a unit, a title
constexpr std::size_t longest_file_name = 100;  // bytes of a file's name

void note(Faults& faults, const char* code, const std::string& pointer, std::string says) {
    faults.push_back({code, pointer, std::move(says), "", {}});
}

void check_words(const std::string& words, const std::string& pointer, Faults& faults) {
    if (words.size() <= longest_words) return;
    note(faults, "too-long", pointer,
         fmt::format("{} bytes of text; write at most {}", words.size(), longest_words));
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
    check_words(photo.note, pointer, faults);
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
        check_words(file.title, pointer, faults);
        check_words(file.type, pointer, faults);
    }
}

}  // namespace toft::store
