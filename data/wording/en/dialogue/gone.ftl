# Equipment that is not there any more.
noted = Without the { $what }, then.
