// must say: conversion from 'toft::Celsius' to non-scalar type
#include "base/temperature.h"

using namespace toft;

Kelvins rise = celsius(70);
