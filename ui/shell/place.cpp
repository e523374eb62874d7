#include "shimwright/widgets/style.h"
