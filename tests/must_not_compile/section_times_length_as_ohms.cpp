// must say: conversion from 'Quantity
#include "base/units.h"

using namespace toft;

Ohms r = square_millimetres(10) * metres(20);
