// must say: conversion from 'double' to non-scalar type
#include "base/units.h"

using namespace toft;

Volts u = 230.0;
