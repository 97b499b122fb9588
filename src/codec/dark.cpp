#include "codec/dark.h"

#include "codec/guard_tree.h"

namespace toft::codec {

std::string write_dark(const std::string& job, const answer::SchemeAnswer& scheme) {
    const Json json{{"format", "toft-dark/1"},
                    {"job", job},
                    {"scheme", scheme.key},
                    {"residual", residual_json(scheme.guard)},
                    {"dark", dark_json(scheme.guard)}};
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace toft::codec
