#include "request/picture.h"
#include "request/verbs.h"

namespace toft::request {

namespace {

std::string picture(Bench& bench, std::string_view body, const Asked&) {
    return picture_of(gallery::pictures(), bench, body);
}

}  // namespace

Verb picture_verb() {
    return {"picture",
            "a drawing of the job with one of its schemes, as SVG",
            "toft-picture/1",
            "",
            false,
            job_and({{"picture", "string", false, "which; the place, else"},
                     {"key", "string", false, "of a scheme of the answer, or its rank"},
                     {"run", "string", false, "id; the first from the house, else"},
                     {"width", "number", false, "of the drawing, 320 to 1400; of a sheet, else"}}),
            picture};
}

}  // namespace toft::request
