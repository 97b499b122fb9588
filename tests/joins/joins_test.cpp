#include "joins/joins.h"
