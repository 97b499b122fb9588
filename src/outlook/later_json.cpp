#include "outlook/later_json.h"

#include "codec/scheme.h"

namespace toft::outlook {

namespace {

using codec::finite;
using codec::Json;
using codec::rounded;

Json pounds_json(const std::optional<double>& pounds) {
    return pounds ? Json(rounded(*pounds)) : Json();
}

Json words_json(const std::string& words) { return words.empty() ? Json() : Json(words); }

Json addition_json(const AdditionAnswer& a) {
    return {{"key", a.key},
            {"says", a.says},
            {"load_w", rounded(a.load_w)},
            {"length_m", rounded(a.length_m)},
            {"basis", a.basis},
            {"as_built", keeps_word(a.keeps)},
            {"fails", a.fails},
            {"scheme_key", words_json(a.scheme_key)},
            {"scheme", words_json(a.scheme)},
            {"more_now", pounds_json(a.more_now)},
            {"more_later", pounds_json(a.more_later)}};
}

}  // namespace

std::string write_later(const LaterAnswer& a) {
    Json json{{"format", "toft-later/1"},
              {"job", a.job},
              {"scheme", words_json(a.scheme)},
              {"key", words_json(a.scheme_key)},
              {"price", a.scheme.empty() ? Json() : Json(rounded(a.total))},
              {"design_current_a", rounded(a.design_current_a)},
              {"ceilings", Json::array()},
              {"additions", Json::array()},
              {"notes", a.notes},
              {"cautions", a.cautions}};
    for (const auto& c : a.ceilings) {
        json["ceilings"].push_back(
            {{"rule", c.rule}, {"more_a", rounded(c.more_a)}, {"more_kw", rounded(c.more_kw)}});
    }
    for (const auto& addition : a.additions) json["additions"].push_back(addition_json(addition));
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace toft::outlook
