#!/bin/sh
# The steps of a check on any host that keeps files and reads JUnit reports.
# BASE: the revision a change is held against; SHARD: 1/4 for the first of four machines.
set -eu
mullwright check --cache .walls-kept --shard "${SHARD:-1/1}" --output junit > walls.junit.xml || test $? -eq 1
mullwright diff --output html "${BASE:-HEAD~1}" HEAD > change.html || test $? -eq 1
mullwright check --cache .walls-kept --shard "${SHARD:-1/1}" --base "${BASE:-HEAD~1}" --fail-on error
