#include "answer/ground_parts.h"

namespace toft::answer {

LostNeutralAnswer lost_neutral_answer(const GroundCase&) { return {}; }

}  // namespace toft::answer
