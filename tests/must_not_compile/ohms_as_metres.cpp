// must say: conversion from 'Quantity
#include "base/units.h"

using namespace toft;

Metres length = ohms(0.2);
