/**
 * The server's settings as arguments. On the command line rather than in the cluster's files, so that a
 * newer Rillbook brings its own to an older data folder.
 */
export function serverSettings(options: { readonly port: number; readonly durable: boolean }): string[] {
  const settings: Record<string, string> = {
    listen_addresses: '127.0.0.1',
    port: String(options.port),
    // No socket file: it would need a folder that everyone may write to.
    unix_socket_directories: '',
    max_connections: '50',
    shared_buffers: '128MB',
    timezone: 'UTC',
    log_timezone: 'UTC',
    // A forgotten transaction would hold back the change feed, which reads below the oldest one.
    idle_in_transaction_session_timeout: '60s',
    // Failed statements come back to the service, which logs them; here they would only copy customers'
    // data into a second log.
    log_min_messages: 'log',
    log_min_error_statement: 'panic',
    ...(options.durable ? {} : { fsync: 'off', synchronous_commit: 'off', full_page_writes: 'off' }),
  };
  return Object.entries(settings).flatMap(([name, value]) => ['-c', `${name}=${value}`]);
}
