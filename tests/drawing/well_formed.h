#pragma once
// A strict little judge of XML: elements, attributes, character data, the five named entities and
// decimal references. Knows no comments, declarations or CDATA: what we write has none.

#include <cctype>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace toft::drawing {

class WellFormed {
public:
    /// Empty when `text` is one element, well formed; else what is wrong and where.
    static std::string fault_of(std::string_view text) {
        WellFormed judge(text);
        judge.document();
        return judge.fault_;
    }

private:
    explicit WellFormed(std::string_view text) : text_(text) {}

    bool done() const { return at_ >= text_.size() || !fault_.empty(); }
    char now() const { return at_ < text_.size() ? text_[at_] : '\0'; }
    bool starts(std::string_view what) const {
        return at_ < text_.size() && text_.substr(at_, what.size()) == what;
    }
    void fail(const std::string& what) {
        if (fault_.empty()) fault_ = what + " at byte " + std::to_string(at_);
    }
    void spaces() {
        while (now() == ' ' || now() == '\n') ++at_;
    }

    std::string name() {
        const std::size_t start = at_;
        while (std::isalnum(static_cast<unsigned char>(now())) || now() == '-' || now() == ':' ||
               now() == '_') {
            ++at_;
        }
        if (at_ == start) fail("a name is missing");
        return std::string(text_.substr(start, at_ - start));
    }

    void reference() {
        const std::size_t end = text_.find(';', at_);
        if (end == std::string_view::npos) return fail("a bare &");
        const std::string_view inside = text_.substr(at_ + 1, end - at_ - 1);
        static const std::set<std::string_view> known = {"amp", "lt", "gt", "quot", "#39"};
        if (known.count(inside) == 0) return fail("an unknown reference");
        at_ = end + 1;
    }

    /// One character of content; judges UTF-8 only by its control characters.
    void character() {
        if (now() == '&') return reference();
        if (starts("]]>")) return fail("]]> in content");
        const auto byte = static_cast<unsigned char>(now());
        if (byte < 0x20 && byte != '\n') return fail("a control character");
        ++at_;
    }

    void attribute(std::set<std::string>& seen) {
        if (!seen.insert(name()).second) return fail("an attribute twice");
        if (!starts("=\"")) return fail("no value");
        at_ += 2;
        while (!done() && now() != '"') {
            if (now() == '<') return fail("< in a value");
            character();
        }
        ++at_;
    }

    void tag() {
        ++at_;
        const std::string element = name();
        std::set<std::string> seen;
        for (spaces(); !done() && now() != '>' && now() != '/'; spaces()) attribute(seen);
        if (starts("/>")) {
            at_ += 2;
        } else {
            ++at_;
            open_.push_back(element);
        }
    }

    void closing_tag() {
        at_ += 2;
        if (open_.empty() || name() != open_.back()) return fail("a wrong closing tag");
        open_.pop_back();
        if (now() != '>') return fail("no end of a closing tag");
        ++at_;
    }

    void document() {
        if (!starts("<")) return fail("no element");
        tag();
        while (!done() && !open_.empty()) {
            if (starts("</")) {
                closing_tag();
            } else if (now() == '<') {
                tag();
            } else {
                character();
            }
        }
        if (!open_.empty()) fail(open_.back() + " is not closed");
        spaces();
        if (at_ < text_.size()) fail("more after the end");
    }

    std::string_view text_;
    std::size_t at_ = 0;
    std::vector<std::string> open_;
    std::string fault_;
};

}  // namespace toft::drawing
