# TOFT_UNITY: the compiler is given several files of a folder at once. Almost all of its time goes
# into headers, so that a whole build takes about a tenth. Names that a file keeps to itself
# (unnamed namespaces) must then differ within a folder. With OFF each file is compiled alone.
option(TOFT_UNITY "Compile several files of a folder at once" ON)
set(TOFT_UNITY_BATCH 16 CACHE STRING "Files compiled at once, at most")
set(CMAKE_UNITY_BUILD ${TOFT_UNITY})
set(CMAKE_UNITY_BUILD_BATCH_SIZE ${TOFT_UNITY_BATCH})
