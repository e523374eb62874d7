#include "shimwright/json/value.h"
