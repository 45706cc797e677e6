label = Still to go here
# $share: of its time, in percent; $span: how much more it may want
part =
    Not done: { $doing } has had about { $share } % of its time at { $place } after { $had }, and wants about { $left } more
    ({ $span }).
