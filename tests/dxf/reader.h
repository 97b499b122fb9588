#pragma once
// A strict reader of drawing exchange files of release 12, written apart from the writer: pairs of
// a group code and a value, sections, tables, entities with only the codes that they may have.

#include <algorithm>
#include <cstdlib>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace toft::dxf {

struct Pair {
    int code = 0;
    std::string value;
};

struct Entity {
    std::string kind;
    std::string layer;
    std::vector<Pair> pairs;
    std::vector<Entity> vertices;  ///< of a polyline

    double number(int code) const {
        for (const Pair& p : pairs) {
            if (p.code == code) return std::strtod(p.value.c_str(), nullptr);
        }
        return 0;
    }
    std::string word(int code) const {
        for (const Pair& p : pairs) {
            if (p.code == code) return p.value;
        }
        return "";
    }
};

struct Drawing {
    std::string version;
    std::set<std::string> layers, line_types, styles;
    std::vector<Entity> entities;
    std::string wrong;  ///< the first thing that is against the format; empty for none

    std::vector<Entity> of(const std::string& kind, const std::string& layer) const {
        std::vector<Entity> some;
        for (const Entity& e : entities) {
            if (e.kind == kind && e.layer == layer) some.push_back(e);
        }
        return some;
    }
};

class Reader {
public:
    explicit Reader(const std::string& file) { split(file); }

    Drawing read() {
        while (good() && !is(0, "EOF")) section();
        if (good()) {
            ++at_;
            if (at_ != pairs_.size()) wrong("something after EOF");
        }
        check();
        return std::move(out_);
    }

private:
    void wrong(const std::string& what) {
        if (out_.wrong.empty()) out_.wrong = what + " at pair " + std::to_string(at_);
    }
    bool good() {
        if (out_.wrong.empty() && at_ >= pairs_.size()) wrong("ends too early");
        return out_.wrong.empty();
    }
    bool is(int code, const std::string& value) const {
        return at_ < pairs_.size() && pairs_[at_].code == code && pairs_[at_].value == value;
    }
    void expect(int code, const std::string& value) {
        if (!good()) return;
        if (!is(code, value)) wrong("expected " + value);
        ++at_;
    }

    void split(const std::string& file) {
        std::vector<std::string> lines;
        std::size_t from = 0;
        while (from < file.size()) {
            const std::size_t end = file.find("\r\n", from);
            if (end == std::string::npos) return wrong("a line without its end");
            lines.push_back(file.substr(from, end - from));
            from = end + 2;
        }
        if (lines.size() % 2 != 0) return wrong("a code without a value");
        for (std::size_t i = 0; i < lines.size(); i += 2) {
            char* end = nullptr;
            const long code = std::strtol(lines[i].c_str(), &end, 10);
            if (lines[i].empty() || *end != 0) wrong("no code: " + lines[i]);
            for (const char c : lines[i + 1]) {
                if (c < 0x20 || c > 0x7E) wrong("not ASCII: " + lines[i + 1]);
            }
            if (lines[i + 1].size() > 255) wrong("a value too long");
            pairs_.push_back({static_cast<int>(code), lines[i + 1]});
            check_number(pairs_.back());
        }
    }

    /// Codes 10 to 59 hold numbers, 60 to 79 whole ones.
    void check_number(const Pair& p) {
        if (p.code < 10 || p.code > 79) return;
        char* end = nullptr;
        if (p.code < 60) {
            std::strtod(p.value.c_str(), &end);
        } else {
            std::strtol(p.value.c_str(), &end, 10);
        }
        if (p.value.empty() || *end != 0) wrong("no number: " + p.value);
    }

    void section() {
        expect(0, "SECTION");
        if (!good()) return;
        const std::string name = pairs_[at_].value;
        if (pairs_[at_].code != 2) wrong("a section without a name");
        if (!sections_.insert(name).second) wrong("two sections " + name);
        ++at_;
        while (good() && !is(0, "ENDSEC")) {
            if (name == "HEADER") {
                header();
            } else if (name == "TABLES") {
                table();
            } else if (name == "ENTITIES") {
                out_.entities.push_back(entity());
            } else {
                wrong("no such section " + name);
            }
        }
        ++at_;
    }

    void header() {
        if (pairs_[at_].code != 9 || pairs_[at_].value[0] != '$') return wrong("no variable");
        const std::string name = pairs_[at_++].value;
        if (name == "$ACADVER" && good()) out_.version = pairs_[at_].value;
        while (good() && pairs_[at_].code != 9 && pairs_[at_].code != 0) ++at_;
    }

    void table() {
        expect(0, "TABLE");
        if (!good()) return;
        const std::string name = pairs_[at_++].value;
        if (good() && pairs_[at_].code != 70) wrong("a table without its number of rows");
        const int most = std::atoi(pairs_[at_++].value.c_str());
        int rows = 0;
        while (good() && is(0, name)) {
            ++at_;
            ++rows;
            if (good() && pairs_[at_].code != 2) wrong("a row without a name");
            row(name, pairs_[at_].value);
            while (good() && pairs_[at_].code != 0) ++at_;
        }
        if (rows > most) wrong("more rows than said in " + name);
        expect(0, "ENDTAB");
    }

    void row(const std::string& table, const std::string& name) {
        if (table == "LAYER") out_.layers.insert(name);
        if (table == "LTYPE") out_.line_types.insert(name);
        if (table == "STYLE") out_.styles.insert(name);
    }

    Entity entity() {
        static const std::map<std::string, std::set<int>> may = {
            {"LINE", {6, 8, 10, 20, 30, 11, 21, 31}},
            {"CIRCLE", {6, 8, 10, 20, 30, 40}},
            {"SOLID", {8, 10, 20, 30, 11, 21, 31, 12, 22, 32, 13, 23, 33}},
            {"POLYLINE", {6, 8, 66, 10, 20, 30, 70}},
            {"VERTEX", {8, 10, 20, 30}},
            {"SEQEND", {8}},
            {"TEXT", {8, 10, 20, 30, 40, 1, 50, 7, 72, 11, 21, 31}}};
        Entity e;
        if (pairs_[at_].code != 0) wrong("no entity");
        e.kind = pairs_[at_++].value;
        const auto codes = may.find(e.kind);
        if (codes == may.end()) {
            wrong("no entity of release 12: " + e.kind);
            return e;
        }
        while (good() && pairs_[at_].code != 0) {
            if (codes->second.count(pairs_[at_].code) == 0) wrong("a strange code in " + e.kind);
            if (pairs_[at_].code == 8) e.layer = pairs_[at_].value;
            e.pairs.push_back(pairs_[at_++]);
        }
        while (e.kind == "POLYLINE" && good() && is(0, "VERTEX")) e.vertices.push_back(entity());
        if (e.kind == "POLYLINE" && entity().kind != "SEQEND") wrong("a polyline without its end");
        return e;
    }

    void check() {
        if (out_.version != "AC1009") wrong("not release 12");
        for (const Entity& e : out_.entities) {
            if (out_.layers.count(e.layer) == 0) wrong("a layer without its row: " + e.layer);
            const std::string line = e.word(6);
            if (!line.empty() && out_.line_types.count(line) == 0) wrong("no line " + line);
            if (e.kind == "TEXT" && out_.styles.count(e.word(7)) == 0) wrong("no style");
            if (e.kind == "POLYLINE" && e.vertices.size() < 2) wrong("a polyline of a point");
        }
    }

    std::vector<Pair> pairs_;
    std::size_t at_ = 0;
    std::set<std::string> sections_;
    Drawing out_;
};

inline Drawing read(const std::string& file) { return Reader(file).read(); }

}  // namespace toft::dxf
