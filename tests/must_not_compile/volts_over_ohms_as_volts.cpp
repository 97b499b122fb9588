// must say: conversion from 'Quantity
#include "base/units.h"

using namespace toft;

Volts u = volts(230) / ohms(2);
