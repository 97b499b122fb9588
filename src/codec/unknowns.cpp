#include "codec/unknowns.h"

namespace toft::codec {

namespace {

Json amount(const std::optional<double>& pounds) {
    return pounds ? Json(rounded(*pounds)) : Json();
}

Json piece_json(const answer::PieceAnswer& p) {
    Json json{{"from", rounded(p.low)}, {"to", rounded(p.high)}, {"sound", p.sound},
              {"key", nullptr},         {"scheme", nullptr},     {"price", nullptr}};
    if (!p.sound) return json;
    json["key"] = p.key;
    json["scheme"] = p.words;
    json["price"] = {rounded(p.total_low), rounded(p.total_high)};
    return json;
}

}  // namespace

Json unknown_json(const answer::UnknownAnswer& u) {
    Json json{{"fact", u.fact},
              {"says", u.says},
              {"range", {rounded(u.low), rounded(u.high)}},
              {"unit", u.unit},
              {"from", u.stated ? "survey" : "rulebook"},
              {"effect", u.effect},
              {"hangs", u.hangs},
              {"answers", Json::array()},
              {"only_together", u.together},
              {"with", u.with},
              {"may_save", amount(u.saves)},
              {"may_save_with_others", amount(u.saves_with)},
              {"worth", amount(u.worth)},
              {"ask", u.ask},
              {"why", u.why},
              {"question", u.question},
              {"how", u.how},
              {"by", u.by},
              {"minutes", rounded(u.minutes)}};
    if (!u.place.empty()) json["place"] = u.place;
    if (u.saves_alike) json["may_save_alike"] = rounded(*u.saves_alike);
    for (const answer::PieceAnswer& p : u.pieces) json["answers"].push_back(piece_json(p));
    return json;
}

std::string write_ask(const answer::AskAnswer& a) {
    Json json{{"format", "toft-ask/1"},
              {"job", a.job},
              {"sound", a.sound},
              {"conditional", a.conditional},
              {"stands", a.stands.empty() ? Json() : Json(a.stands)},
              {"price", a.stands.empty() ? Json() : Json(rounded(a.total))},
              {"proved", a.proved},
              {"stopped", a.stopped},
              {"find_out", Json::array()},
              {"leave", Json::array()},
              {"assumed", a.assumed},
              {"cautions", a.cautions}};
    for (const auto& u : a.unknowns) json[u.ask ? "find_out" : "leave"].push_back(unknown_json(u));
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace toft::codec
