// must say: conversion from 'toft::Watts' to non-scalar type
#include "base/units.h"

using namespace toft;

VoltAmperes s = Watts{3000};
