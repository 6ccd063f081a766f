/** A worker that cannot start. */
throw new SyntaxError('this worker cannot start');
