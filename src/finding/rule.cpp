#include "finding/rule.h"

namespace toft::rules {

const char* verdict_word(Verdict verdict) {
    switch (verdict) {
        case Verdict::meets:
            return "meets";
        case Verdict::caution:
            return "caution";
        case Verdict::not_known:
            return "not known";
        case Verdict::fails:
            return "fails";
    }
    return "";
}

const char* trend_word(Trend trend) {
    switch (trend) {
        case Trend::none:
            return "no effect";
        case Trend::worse:
            return "worse";
        case Trend::better:
            return "better";
        case Trend::either:
            return "either way";
    }
    return "";
}

}  // namespace toft::rules
